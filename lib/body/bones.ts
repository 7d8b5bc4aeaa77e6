import { gathered } from "../gathered";
import { type JointName, SIDES, type Side } from "./joint";
import type { Mark, ViewMarks } from "./mark";
import { markOf } from "./mark-of";

/** A line to draw between two marks, and whose side it is on; null for the trunk and head. */
export interface Bone {
  readonly from: JointName;
  readonly to: JointName;
  readonly side: Side | null;
}

/** A chain of joints from the body outward. A joint that is not marked is passed over. */
interface Chain {
  readonly joints: readonly JointName[];
  readonly side: Side | null;
}

const CHAINS: readonly Chain[] = [
  { joints: ["head", "neck"], side: null },
  ...SIDES.flatMap((side): Chain[] => [
    { joints: ["neck", `${side}-shoulder`, `${side}-elbow`, `${side}-wrist`], side },
    { joints: ["neck", `${side}-hip`], side: null },
    { joints: [`${side}-hip`, `${side}-knee`, `${side}-ankle`, `${side}-heel`], side },
    { joints: [`${side}-heel`, `${side}-ball`, `${side}-toe`], side },
    { joints: [`${side}-ankle`, `${side}-ball`], side },
  ]),
  { joints: ["left-hip", "right-hip"], side: null },
];

/** Every bone of a figure with all its marks. */
export const BONES: readonly Bone[] = CHAINS.flatMap(({ joints, side }) => pairs(joints, side));

/** A bone with the two marks it runs between. */
export interface DrawnBone extends Bone {
  readonly start: Mark;
  readonly end: Mark;
}

/**
 * The bones to draw for the marks there are. Where a joint within a limb is not marked the line
 * runs to the next that is (heel to toe without a ball); a limb is never drawn past its last mark.
 */
export function bonesOf(marks: ViewMarks): readonly DrawnBone[] {
  return gathered(
    gathered(CHAINS, ({ joints, side }) =>
      pairs(
        joints.filter((joint) => markOf(marks, joint) !== null),
        side,
      ),
    ),
    (bone) => {
      const start = markOf(marks, bone.from);
      const end = markOf(marks, bone.to);
      return start === null || end === null ? [] : [{ ...bone, start, end }];
    },
  );
}

function pairs(joints: readonly JointName[], side: Side | null): Bone[] {
  return gathered(joints.slice(1), (to, index) => {
    const from = joints[index];
    return from === undefined ? [] : [{ from, to, side }];
  });
}
