import {
  type Bend,
  bendOf,
  groundToSide,
  type JointName,
  type LimbJoint,
  limbJoint,
  markOf,
  type Side,
} from "../../body";
import type { Point } from "../../geometry";
import { boneDepth, type LimbBone, trueLengths } from "../limb-bones";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

export type LimbName = "leg" | "arm";

/** A limb of two bones in the side view, with the lengths that its bones are to have there. Panel units. */
export interface LimbSeen {
  readonly names: { readonly root: JointName; readonly middle: JointName; readonly end: JointName };
  /** Null where a joint is neither marked nor follows from the stand's foot. */
  readonly root: Point | null;
  readonly middle: Point | null;
  readonly end: Point | null;
  /** Null where the figure's own length is not known. */
  readonly upper: number | null;
  readonly lower: number | null;
  readonly bend: Bend;
}

interface Parts {
  readonly bones: readonly [LimbBone, LimbBone];
  readonly joints: readonly [LimbJoint, LimbJoint, LimbJoint];
  /** How it bends where it is drawn straight: knees forward, elbows back. */
  readonly straight: Bend;
}

const LIMBS: Readonly<Record<LimbName, Parts>> = {
  leg: { bones: ["thigh", "shank"], joints: ["hip", "knee", "ankle"], straight: -1 },
  arm: { bones: ["upper arm", "forearm"], joints: ["shoulder", "elbow", "wrist"], straight: 1 },
};

/** One leg or arm of a panel, and the lengths that the figure's own bones have in its depth. */
export function limbSeen(study: Study, panel: WalkPanel, side: Side, limb: LimbName): LimbSeen {
  const { bones, joints, straight } = LIMBS[limb];
  const [root, middle, end] = [0, 1, 2].map((nth) => {
    const joint = joints[nth];
    return joint === undefined ? null : at(study, panel, limbJoint(side, joint));
  });
  const whole = root != null && middle != null && end != null;
  return {
    names: {
      root: limbJoint(side, joints[0]),
      middle: limbJoint(side, joints[1]),
      end: limbJoint(side, joints[2]),
    },
    root: root ?? null,
    middle: middle ?? null,
    end: end ?? null,
    upper: flatLength(study, panel, side, bones[0]),
    lower: flatLength(study, panel, side, bones[1]),
    bend: whole ? (bendOf(root, middle, end) ?? straight) : straight,
  };
}

function at({ leg, seen }: Study, panel: WalkPanel, joint: JointName): Point | null {
  const marked = markOf(panel.marks.side, joint);
  if (marked !== null) return marked;
  const mark = seen(panel, joint);
  if (mark === null || leg.kind === "cannot-tell") return null;
  return groundToSide(mark, { place: 0, legLength: leg.value });
}

/** A bone's own length as the side view shows it, less the depth it has from ahead. Panel units. */
function flatLength(study: Study, panel: WalkPanel, side: Side, bone: LimbBone): number | null {
  const own = trueLengths(study)[bone];
  if (own === null || study.leg.kind === "cannot-tell") return null;
  const depth = boneDepth(study, panel, side, bone)?.value ?? 0;
  const flat = Math.sqrt(Math.max(0, own.value ** 2 - depth ** 2)) * study.leg.value;
  return flat > 0 ? flat : null;
}
