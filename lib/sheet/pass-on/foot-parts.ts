import { type JointName, type LimbJoint, limbJoint, type Side } from "../../body";

const PARTS = ["ankle", "heel", "ball", "toe"] as const satisfies readonly LimbJoint[];

/** A foot's joints, from the ankle round to the toe. */
export function footJoints(side: Side): readonly JointName[] {
  return PARTS.map((part) => limbJoint(side, part));
}
