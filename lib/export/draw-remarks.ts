import type { Stretch } from "../body";
import type { CheckId, Remark } from "../gait";
import type { View } from "../geometry";
import type { Panel } from "../sheet";
import { levelColour } from "./palette";
import { pointAtHips } from "./point-at-hips";
import { pointAtPose } from "./point-at-pose";
import { pointAtSlip } from "./point-at-slip";
import type { RemarkDrawing } from "./remark-drawing";
import { type Box, traceBox } from "./shapes";
import type { Surface } from "./surface";

/** The remarks to point at in one view of a panel. */
export interface RemarksOnPanel {
  readonly panel: Panel;
  readonly view: View;
  /** Remarks seen on this panel, each with its number where the page numbers them. */
  readonly remarks: readonly { readonly remark: Remark; readonly key?: number }[];
  /** Finds the panels that remarks compare with. */
  readonly panelById: ReadonlyMap<string, Panel>;
  /** The ground each panel looks at: see `groundUnder`. */
  readonly stretchOf: (panel: Panel) => Stretch;
  /** What is seen of the view, panel units. */
  readonly window: Box;
  /** Panel units a pixel of the result. */
  readonly pixel: number;
  /** Places that labels keep clear of, panel units. */
  readonly keepClear?: readonly Box[];
}

/**
 * Points at remarks on the drawing: a slip by the dashed footprint and an arrow from it, a hip
 * height by the other pose's line and the gap between, weight by its plumb line over the span of the
 * feet, a foot by its gap to the ground or its tilt. What belongs to the ruler is shown there.
 *
 * Units:   panel units
 */
export function drawRemarks(surface: Surface, on: RemarksOnPanel): void {
  const { remarks, panelById, keepClear = [], ...where } = on;
  if (remarks.length === 0) return;
  const covered = [...keepClear];
  const drawn = new Map<CheckId, number>();
  surface.save();
  traceBox(surface, on.window);
  surface.clip(); // a footprint far off must not run over the neighbours
  for (const { remark, key = null } of remarks) {
    const pointer = POINTERS[remark.check];
    const earlier = panelById.get(remark.panels[0] ?? "");
    if (pointer === null || earlier === undefined) continue;
    if (earlier === on.panel && COMPARED.has(remark.check)) continue;
    const slot = drawn.get(remark.check) ?? 0;
    drawn.set(remark.check, slot + 1);
    surface.save();
    surface.strokeStyle = levelColour(remark.level);
    surface.fillStyle = levelColour(remark.level);
    surface.lineCap = "round";
    pointer(surface, { ...where, remark, key, earlier, slot, covered });
    surface.restore();
  }
  surface.restore();
}

type Pointer = (surface: Surface, drawing: RemarkDrawing) => void;

const POINTERS: Readonly<Record<CheckId, Pointer | null>> = {
  "missing-pose": null,
  "pose-order": null,
  "hip-order": pointAtHips,
  "hip-range": null,
  "weight-side": pointAtPose,
  "weight-front": pointAtPose,
  slide: pointAtSlip,
  float: pointAtPose,
  sink: pointAtPose,
  "foot-roll": pointAtPose,
  clearance: null,
  "limb-length": null,
  reach: null,
  knee: null,
  snap: null,
  gaps: null,
  symmetry: pointAtPose,
  loop: null,
  hitch: null,
  opposition: null,
  tempo: null,
  width: null,
  views: null,
  sides: null,
  "lead-in": null,
};

/** What is drawn against an earlier panel has nothing to show without one. */
const COMPARED: ReadonlySet<CheckId> = new Set(["slide", "hip-order"]);
