export { charts } from "./charts";
export { common } from "./common";
export { door } from "./door";
export { handover } from "./handover";
export { people } from "./people";
export { remarks } from "./remarks";
export { start } from "./start";
export { strip } from "./strip";
