export { type InkState, takesInk } from "./ink-state";
export { HUES, type Me } from "./me";
export { openRoom, type Room } from "./open-room";
export type { Person, Pointer } from "./people";
export { freshEntryId, freshPanelId, freshStrokeId } from "./random-id";
export type { ShutCause } from "./shut-cause";
export type { Store } from "./store";
export {
  RoomContext,
  useMayCritique,
  useMayDraw,
  usePanel,
  useReview,
  useReviewed,
  useRoom,
  useSheet,
  useSkipped,
  useStoreValue,
} from "./use-room";
