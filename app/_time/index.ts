export { GhostFeet, type GhostFeetProps } from "./ghost-feet";
export { LoopHandles, type LoopHandlesProps } from "./loop-handles";
export { propose } from "./propose";
export { TimeBar } from "./time-bar";
export { TimeRows } from "./time-rows";
export { useFeetToBe } from "./use-feet-to-be";
