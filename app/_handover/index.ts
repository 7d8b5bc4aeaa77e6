export { ExportButton } from "./export-button";
export { PicturesLeftOut } from "./pictures-left-out";
