export { ExportButton } from "./export-button";
export { LostActs } from "./lost-acts";
export { PicturesLeftOut } from "./pictures-left-out";
export { ToldNote } from "./told-note";
export { countedWords } from "./told-words";
