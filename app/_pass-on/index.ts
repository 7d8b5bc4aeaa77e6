export { doPassOn } from "./do-pass-on";
export { GhostLayer } from "./ghost-layer";
export { PassOnGroup } from "./pass-on-group";
