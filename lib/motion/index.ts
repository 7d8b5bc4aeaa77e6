export {
  type EvenFrame,
  type EvenLayout,
  evenFrames,
  STEP_POSES,
  type StepPose,
  TRADE_SHARES,
} from "./even-frames";
export { type Exposure, nearestDrawn } from "./exposure";
export type { Frame } from "./frame";
export { POSES, type PoseName } from "./pose";
