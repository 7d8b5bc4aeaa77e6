export { neighbour } from "./neighbour";
export { PlayButton } from "./play-button";
export { PlayStage } from "./play-stage";
