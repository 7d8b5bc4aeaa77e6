import {
  type JointName,
  type LimbJoint,
  limbJoint,
  markOf,
  type Side,
  type ViewMarks,
} from "../../lib/body";
import type { View } from "../../lib/geometry";

/**
 * The right side comes first: in the side view it is the near one, drawn whole, and the far limb is
 * easier to find beside it. In the front view it is on the page's left, where reading begins.
 */
const RIGHT_FIRST: readonly Side[] = ["right", "left"];

/** The limbs' joints in the order they are proposed; the quick set is what most readings need. */
export const LIMB_ORDER: Readonly<
  Record<View, { readonly quick: readonly LimbJoint[]; readonly more: readonly LimbJoint[] }>
> = {
  side: {
    quick: ["hip", "knee", "heel", "toe"],
    more: ["ankle", "ball", "shoulder", "elbow", "wrist"],
  },
  front: {
    quick: ["hip", "heel", "toe"],
    more: ["knee", "ankle", "ball", "shoulder", "elbow", "wrist"],
  },
};

/** Joints that are on neither side, as they are proposed; a load is marked only when asked for. */
export const CENTRE_ORDER = ["neck", "head"] as const satisfies readonly JointName[];

/** Joints of one view in the order they are proposed. */
export function proposals(view: View): readonly JointName[] {
  return [...quickSet(view), ...bothSides(LIMB_ORDER[view].more), ...CENTRE_ORDER];
}

/** The few joints of a view that the readings of a walk cannot do without. */
export function quickSet(view: View): readonly JointName[] {
  return bothSides(LIMB_ORDER[view].quick);
}

/** The joint that the next tap places when none is chosen; null when all are marked. */
export function nextJoint(marks: ViewMarks, view: View): JointName | null {
  return proposals(view).find((joint) => markOf(marks, joint) === null) ?? null;
}

export function quickSetDone(marks: ViewMarks, view: View): boolean {
  return quickSet(view).every((joint) => markOf(marks, joint) !== null);
}

function bothSides(joints: readonly LimbJoint[]): JointName[] {
  return joints.flatMap((joint) => RIGHT_FIRST.map((side) => limbJoint(side, joint)));
}
