export { ExportButton } from "./export-button";
export { PicturesLeftOut } from "./pictures-left-out";
export { PrintDialog } from "./print-dialog";
