export { BODY, CHEST, footJoints } from "./body-parts";
export { BONES, type Bone, bonesOf, type DrawnBone } from "./bones";
export type { Build } from "./build";
export { carriersOf } from "./carried-by";
export { type CentreOfMass, centreOfMass, type Weighing } from "./centre-of-mass";
export { type FigureSize, figureSizeOf } from "./figure/figure-size";
export { measuredSize } from "./figure/measured-size";
export { FOOT_MODEL_PRECISION, withFootOfStand } from "./foot-of-stand";
export {
  type FrontPoint,
  frontToGround,
  groundToFront,
  groundToSide,
  type SidePoint,
  type Stretch,
  sideToGround,
} from "./ground-space";
export { JOINTS, type JointName, LIMB_JOINTS, type LimbJoint, SIDES, type Side } from "./joint";
export type { Landmark, Landmarks } from "./landmark";
export { LEG_OVER_THIGH_AND_SHANK, type LegLength, legLength } from "./leg-length";
export type { Mark, PoseMarks, ViewMarks } from "./mark";
export { markOf } from "./mark-of";
export { BODY_PARTS, MASS_MODELS, type MassModel } from "./mass-models";
export { mirroredMarks, partnerOf } from "./mirrored-marks";
export { PANEL } from "./panel-space";
export { followedInHeight } from "./pull/followed-in-height";
export type { Pull } from "./pull/pull";
export { pulledFigure } from "./pull/pulled-figure";
export { pulledPose } from "./pull/pulled-pose";
export {
  SEGMENTS,
  type Segment,
  type SegmentLength,
  segmentLengths,
} from "./segment-lengths";
export { hundredth, putMark, shiftedMarks } from "./shifted-marks";
export { limbJoint, otherSide } from "./side";
export { KNEE_STRAIGHT_WITHIN, type SolvedKnee, solvedKnee } from "./solved-knee";
export { type Bend, bendOf, beyondReach, middleJoint, type TwoBones } from "./two-bone";
