export { acceptAllGuesses, acceptGuess } from "./accept-guess";
export { focusGuess } from "./focus-mark";
export { JointPicker } from "./joint-picker";
export { MarkLayer } from "./mark-layer";
