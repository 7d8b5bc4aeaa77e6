export type { Frame } from "./frame";
export { POSES, type PoseName } from "./pose";
