export { letGo, rubOutGathered } from "./gather-deeds";
export { GatherLayer } from "./gather-layer";
export { GatherOptions } from "./gather-options";
