export { hermite, monotoneSlope, parabolaSlope, type SlopeOf } from "./hermite";
export { inBetweens, type Motion, type MotionSpan } from "./in-betweens";
export type { FrontFigure, GroundFigure, MotionKey, Planted, SideFigure } from "./motion-key";
