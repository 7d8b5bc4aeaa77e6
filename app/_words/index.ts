export { common } from "./common";
