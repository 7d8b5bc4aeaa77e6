export type { Build } from "./build";
export { JOINTS, type JointName, LIMB_JOINTS, type LimbJoint, SIDES, type Side } from "./joint";
export type { Mark, PoseMarks, ViewMarks } from "./mark";
