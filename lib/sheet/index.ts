export { advanceOf } from "./advance";
export { defaultBrief } from "./brief";
export { capturedExample } from "./captured-example";
export type { Critique } from "./critique";
export { type CritiqueView, openCritiqueView } from "./critique-view";
export { brindleExample } from "./demo/brindle-example";
export { PICTURE_SIZE } from "./fields";
export { emptyPanel, layOut } from "./lay-out";
export { MIGRATIONS, type Migration, type Migrations, migrate } from "./migrate";
export { type Chance, newEntryId, newPanelId, newStrokeId } from "./new-id";
export { type BodyShift, bodyShift } from "./pass-on/body-shift";
export { footCopy } from "./pass-on/foot-copy";
export { footOnPrint } from "./pass-on/foot-on-print";
export { type CannotPass, marksAfter, type Passing, type PassOn } from "./pass-on/passing";
export { poseCopy, poseMirror } from "./pass-on/pose-copy";
export { readCritique } from "./read-critique";
export { readSheet, readSheetCounting, type SheetReading } from "./read-sheet";
export { readSheetFile, tooLarge } from "./read-sheet-file";
export { ORIGIN, SCHEMA } from "./schema";
export type { Change } from "./set-aside/change";
export { changesIn } from "./set-aside/changes-in";
export { handOverChanges, type SetAsideWork } from "./set-aside/hand-over-changes";
export type {
  Brief,
  HandedSheet,
  InkStroke,
  Panel,
  PanelId,
  PictureId,
  PicturePlace,
  PictureUnder,
  Sheet,
  SheetHead,
  StrokeId,
} from "./sheet";
export { SheetError } from "./sheet-error";
export {
  MAX_SHEET_FILE_BYTES,
  type SheetFile,
  sheetFileText,
  toSheetFile,
} from "./sheet-file";
export { SheetFileError } from "./sheet-file-error";
export { openSheetView, type SheetView } from "./sheet-view";
export { shotFrame } from "./shot-frame";
export { planEvenOut } from "./timing/plan-even-out";
export { leastFrames, type NewTempo, planRetime } from "./timing/plan-retime";
export type { TimedSheet, TimePlan, TimeScope } from "./timing/time-plan";
export { openUndo, type UndoStack } from "./undo";
export { addPanel } from "./verbs/add-panel";
export { amendHead } from "./verbs/amend-head";
export { applyFix } from "./verbs/apply-fix";
export { copyFoot } from "./verbs/copy-foot";
export { copyPose, type PassOnInk } from "./verbs/copy-pose";
export { doAgain, type NotDone } from "./verbs/do-again";
export { drawStroke } from "./verbs/draw-stroke";
export { dropOnPurpose } from "./verbs/drop-on-purpose";
export { evenOut } from "./verbs/even-out";
export { footOnFootprint } from "./verbs/foot-on-footprint";
export { keepOnPurpose } from "./verbs/keep-on-purpose";
export { liftMark } from "./verbs/lift-mark";
export { mirrorPose } from "./verbs/mirror-pose";
export { movePicture } from "./verbs/move-picture";
export { placeMark } from "./verbs/place-mark";
export { placeMarks } from "./verbs/place-marks";
export { putPicture } from "./verbs/put-picture";
export { redrawDone } from "./verbs/redraw-done";
export { relabelPanel } from "./verbs/relabel-panel";
export { removePanel } from "./verbs/remove-panel";
export { retime } from "./verbs/retime";
export { rubOut } from "./verbs/rub-out";
export { rubOutPart } from "./verbs/rub-out-part";
export { setHold } from "./verbs/set-hold";
export { setPlace } from "./verbs/set-place";
export { setTravel } from "./verbs/set-travel";
export { shiftBody } from "./verbs/shift-body";
export { slidePanel } from "./verbs/slide-panel";
export { takePicture } from "./verbs/take-picture";
export { type StrokeChange, transformStrokes } from "./verbs/transform-strokes";
export { measuredWalkOf, walkOf } from "./walk-of";
export { prepareCritique, writeSheet } from "./write-sheet";
