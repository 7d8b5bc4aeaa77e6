export { doPassOn } from "./do-pass-on";
export { FigureButton } from "./figure-button";
export { GhostLayer } from "./ghost-layer";
export { PassOnGroup } from "./pass-on-group";
export { placeFigure } from "./place-figure";
