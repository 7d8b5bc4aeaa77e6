export {
  type FrontFigure,
  type GroundFigure,
  hermite,
  inBetweens,
  type Motion,
  type MotionKey,
  type MotionSpan,
  monotoneSlope,
  type Planted,
  parabolaSlope,
  type SideFigure,
  type SlopeOf,
} from "./between";
export { type ArmSwing, type BodySwing, bodySwing } from "./body-swing";
export { drawingOn } from "./drawing-on";
export {
  type EvenFrame,
  type EvenLayout,
  evenFrames,
  isStepPose,
  STEP_POSES,
  type StepPose,
  TRADE_SHARES,
} from "./even-frames";
export { type Exposure, nearestDrawn, nextDrawn } from "./exposure";
export type { Frame } from "./frame";
export { type Kept, lastHeld, poseOn } from "./hold";
export { type LegAngles, legAngles } from "./leg-angles";
export { POSES, type PoseName } from "./pose";
export { type Moment, roomIn, type Span, spreadFrames } from "./spread-frames";
