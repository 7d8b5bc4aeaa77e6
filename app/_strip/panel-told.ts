import type { Review } from "../../lib/gait";
import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { keptAt } from "../_purpose";
import { seenAt } from "../_remarks";
import { common, strip } from "../_words";

const HIP_DECIMALS = 2; // of a leg, as the margin's readings have it

/**
 * A panel for whoever does not see it: "frame 17, down, weight on right, hips 0.93 of a leg, 2 remarks".
 * What cannot be read, or was not yet, is left out.
 */
export function panelTold(panel: Panel, review: Review | null): string {
  const { id, pose, weightOn, frame } = panel;
  const side = weightOn === null ? "" : common.side[weightOn];
  const readings = review?.readingsByPanel.get(id);
  const hips = readings?.find((reading) => reading.id === "hip-height")?.answer;
  const remarks = seenAt(review, id).length;
  const kept = keptAt(review, id).length;
  const parts = [
    strip.panelName(common.pose[pose], side, frame),
    ...(hips?.kind === "value" ? [strip.told.hips(hips.value.toFixed(HIP_DECIMALS))] : []),
    ...(remarks > 0 ? [strip.told.remarks(remarks)] : []),
    ...(kept > 0 ? [strip.told.kept(kept)] : []),
    ...(panel.toRedraw.side || panel.toRedraw.front ? [strip.told.toRedraw] : []),
  ];
  return parts.join(strip.told.between);
}

/** What lies on one view of a panel: "12 strokes, 16 joints marked". */
export function viewTold({ ink, marks, toRedraw }: Panel, view: View): string {
  const parts = [
    strip.told.ink(ink[view].length),
    strip.told.joints(Object.keys(marks[view]).length),
    ...(toRedraw[view] ? [strip.told.toRedraw] : []),
  ];
  return parts.join(strip.told.between);
}
