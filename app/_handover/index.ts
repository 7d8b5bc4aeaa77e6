export { ExportButton } from "./export-button";
export { PicturesLeftOut } from "./pictures-left-out";
export { ToldNote } from "./told-note";
