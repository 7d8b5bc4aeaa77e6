export { ExportButton } from "./export-button";
export { PrintDialog } from "./print-dialog";
