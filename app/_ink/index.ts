export { InkLayer } from "./ink-layer";
