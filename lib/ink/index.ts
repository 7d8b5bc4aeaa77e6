export { INKS, type InkColour, type InkPoint, NIBS, type Nib, type Stroke } from "./stroke";
