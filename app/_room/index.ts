export { readerInUse } from "./fetch-reader";
export type { InkState } from "./ink-state";
export { keepSheetOpen } from "./keep-sheet-open";
export { openOwnDrawer } from "./local/own-drawer";
export { HUES, type Me } from "./me";
export type { Room } from "./open-room";
export type { Person, Pointer } from "./people";
export { freshEntryId, freshPanelId, freshStrokeId } from "./random-id";
export type { ReaderState } from "./review-desk";
export type { FallenWhy, Tally, Told } from "./set-aside";
export { sheetOf, tallyOf } from "./set-aside";
export type { ShutCause } from "./shut-cause";
export type { Store } from "./store";
export {
  RoomContext,
  useMayCritique,
  useMayDraw,
  usePanel,
  useReader,
  useReview,
  useReviewed,
  useRoom,
  useSheet,
  useSkipped,
  useStoreValue,
  useTakesInk,
} from "./use-room";
