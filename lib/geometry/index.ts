export { distance } from "./distance";
export { insidePolygon } from "./inside-polygon";
export { median } from "./median";
export { midpoint } from "./midpoint";
export { type Disc, nearestInDiscs } from "./nearest-in-discs";
export type { Point } from "./point";
export { rootSumSquare } from "./root-sum-square";
export { VIEWS, type View } from "./view";
