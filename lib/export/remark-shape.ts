import type { CheckId, Remark } from "../gait";
import { heightOverGround, paceOfFeet, slip, spanOfFeet, tilt } from "./point-at/foot";
import { heightInBothViews, hipLevels, hitchOnPath } from "./point-at/hips";
import { bendOfKnee, handAndFoot, legOverEarlier, lengthOfBone, reachOfLeg } from "./point-at/limb";
import { crossedSides, fromFirstPose, leadingIn, overPartner } from "./point-at/partner";
import type { RemarkShape, ShapeOn, Shaper } from "./point-at/shape";
import { weightFromFront, weightFromSide } from "./point-at/weight";

/** How each check's remark is drawn; null for what belongs to time, which is shown under the ruler. */
const SHAPERS: Readonly<Record<CheckId, Shaper | null>> = {
  "missing-pose": null,
  "pose-order": null,
  "hip-order": hipLevels,
  "hip-range": hipLevels,
  "weight-side": weightFromSide,
  "weight-front": weightFromFront,
  slide: slip,
  float: heightOverGround,
  sink: heightOverGround,
  "foot-roll": tilt,
  clearance: heightOverGround,
  "limb-length": lengthOfBone,
  reach: reachOfLeg,
  knee: bendOfKnee,
  snap: legOverEarlier,
  gaps: null,
  symmetry: overPartner,
  loop: fromFirstPose,
  hitch: hitchOnPath,
  opposition: handAndFoot,
  tempo: paceOfFeet,
  width: spanOfFeet,
  views: heightInBothViews,
  sides: crossedSides,
  "lead-in": leadingIn,
};

/**
 * The drawing of a remark on the panel where it is seen. Null where the remark is not about this view, a
 * mark is missing, or the remark belongs to time.
 *
 * Units:   panel units, y down
 */
export function remarkShape(
  remark: Pick<Remark, "check" | "side" | "spots" | "measured" | "expected">,
  on: ShapeOn,
): RemarkShape | null {
  const { panel, view, earlier } = on;
  const spotOn = (id: string | undefined) =>
    remark.spots.findLast((spot) => spot.panel === id && spot.view === view);
  const spot = spotOn(panel.id);
  const shaper = SHAPERS[remark.check];
  if (spot === undefined || shaper === null) return null;
  const earlierJoints = spotOn(earlier?.id)?.joints ?? spot.joints;
  return shaper({ ...on, remark, joints: spot.joints, earlierJoints });
}
