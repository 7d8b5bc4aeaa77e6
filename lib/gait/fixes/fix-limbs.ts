import { markOf, type PoseMarks, putMark, SIDES, type Side, type ViewMarks } from "../../body";
import { type Disc, nearestInDiscs } from "../../geometry";
import type { Remark } from "../finding";
import { boneLength, type LimbBone, trueLengths } from "../limb-bones";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { reachedFoot } from "./fix-reach";
import { withLengths } from "./limb-lengths";
import { type LimbName, limbSeen } from "./limb-of";
import { movedPanel, type Proposal } from "./proposal";

/**
 * A bone too long or too short: knee or elbow where both bones have their lengths, hip and ankle kept; where
 * a leg does not reach so, as `fixReach`. A pair is settled on both sides. From ahead the joints
 * are brought as near as bones are long.
 */
export function fixLimbs(study: Study, { panels, side, spots }: Remark): readonly Proposal[] {
  const panel = study.walk.panels.find(({ id }) => id === panels[0]);
  const [spot] = spots;
  if (panel === undefined || side === null || spot === undefined) return [];
  const limb = spot.joints.some((joint) => joint.endsWith("elbow")) ? "arm" : "leg";
  const sides: readonly Side[] = spots.length > 1 ? SIDES : [side];
  const whose = sides.length > 1 ? `both ${limb}s their lengths` : `the ${side} ${limb} its length`;
  if (spot.view === "front") {
    const front = sides.reduce(
      (marks, one) => nearer(study, panel, marks, one, limb),
      panel.marks.front,
    );
    const moved = { marks: { ...panel.marks, front }, short: [] };
    return [movedPanel(panel, moved, `Give ${whose} from ahead`, study.leg)];
  }
  const marks = sides.reduce<PoseMarks | null>(
    (before, one) => before && withLengths(study, { ...panel, marks: before }, one, limb),
    panel.marks,
  );
  if (marks !== null) return [movedPanel(panel, { marks, short: [] }, `Give ${whose}`, study.leg)];
  return limb === "leg" ? sides.flatMap((one) => reachedFoot(study, panel, one)) : [];
}

const CHAINS: Readonly<Record<LimbName, readonly [LimbBone, LimbBone]>> = {
  leg: ["thigh", "shank"],
  arm: ["upper arm", "forearm"],
};

/** A front view's knee or elbow where neither bone is longer than it is, else its end brought along. */
function nearer(
  study: Study,
  panel: WalkPanel,
  marks: ViewMarks,
  side: Side,
  limb: LimbName,
): ViewMarks {
  const { names } = limbSeen(study, panel, side, limb);
  const [upper, lower] = CHAINS[limb].map((bone) => longest(study, panel, side, bone));
  const [root, middle, end] = [names.root, names.middle, names.end].map((j) => markOf(marks, j));
  if (middle == null) return marks;
  const discs: Disc[] = [];
  if (root != null && upper != null) discs.push({ x: root.x, y: root.y, radius: upper });
  if (end != null && lower != null) discs.push({ x: end.x, y: end.y, radius: lower });
  return putMark(marks, names.middle, nearestInDiscs(middle, discs));
}

/** How long a bone may be seen from ahead, panel units. */
function longest(study: Study, panel: WalkPanel, side: Side, bone: LimbBone): number | null {
  const own = trueLengths(study)[bone];
  if (own === null || study.leg.kind === "cannot-tell") return null;
  const here = boneLength(study, panel, side, bone)?.value ?? 0;
  return Math.max(own.value, here) * study.leg.value;
}
