export type { Point } from "./point";
export { VIEWS, type View } from "./view";
