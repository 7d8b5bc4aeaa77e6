export { stateWords } from "./ink-words";
export { NameDialog } from "./name-dialog";
export { PencilLayer } from "./pencil-layer";
export { PeopleBar } from "./people-bar";
export { StateLine } from "./state-line";
