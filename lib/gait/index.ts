export type {
  CannotTell,
  CheckId,
  Finding,
  Level,
  Reading,
  Remark,
  Sound,
  Spot,
  Unit,
} from "./finding";
export {
  KINDS,
  type Travel,
  type Walk,
  type WalkKind,
  type WalkPanel,
  YARDSTICKS,
  type Yardstick,
} from "./walk";
