import { type JointName, type LimbJoint, SIDES, type Side } from "./joint";
import { limbJoint } from "./side";

/** Everything that the hips carry and that turns with the chest. */
export const CHEST: readonly JointName[] = [
  "head",
  "neck",
  "load",
  ...SIDES.flatMap((side) => [
    limbJoint(side, "shoulder"),
    limbJoint(side, "elbow"),
    limbJoint(side, "wrist"),
  ]),
];

/** Hips, and all that they carry: what goes along when the body is moved over its feet. */
export const BODY: readonly JointName[] = [
  ...CHEST,
  ...SIDES.map((side) => limbJoint(side, "hip")),
];

const FOOT = ["ankle", "heel", "ball", "toe"] as const satisfies readonly LimbJoint[];

/** A foot's joints, from the ankle round to the toe. */
export function footJoints(side: Side): readonly JointName[] {
  return FOOT.map((part) => limbJoint(side, part));
}
