export { JointPicker } from "./joint-picker";
export { MarkLayer } from "./mark-layer";
