export { stateWords } from "./ink-words";
export { InviteDialog } from "./invite-dialog";
export { NameDialog } from "./name-dialog";
export { PencilLayer } from "./pencil-layer";
export { PeopleBar } from "./people-bar";
export { StateLine } from "./state-line";
