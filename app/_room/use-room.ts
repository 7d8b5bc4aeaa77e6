"use client";
import { createContext, useCallback, useContext, useSyncExternalStore } from "react";
import type { Review } from "../../lib/gait";
import type { Panel, PanelId, Sheet } from "../../lib/sheet";
import type { DocumentName } from "../../shared/document-name";
import { mayWrite } from "../../shared/role";
import { takesInk } from "./ink-state";
import type { Room } from "./open-room";
import type { ReaderState } from "./review-desk";
import type { Store } from "./store";

export const RoomContext = createContext<Room | null>(null);

export function useRoom(): Room {
  const room = useContext(RoomContext);
  if (room === null) throw new Error("a room is only there inside an open sheet");
  return room;
}

export function useStoreValue<T>(store: Store<T>): T {
  return useSyncExternalStore(store.subscribe, store.get, store.get);
}

/** What a selector picks of the sheet; repaints when the picked value is another one. */
export function useSheet<T>(select: (sheet: Sheet) => T): T {
  const { sheet } = useRoom();
  const read = () => select(sheet.getSnapshot());
  return useSyncExternalStore(sheet.subscribe, read, read);
}

/** How many values of the sheet could not be read and are left out. */
export function useSkipped(): number {
  const { sheet, said } = useRoom();
  const ofSheet = () => sheet.skipped().length;
  const ofCritique = () => said.skipped().length;
  return (
    useSyncExternalStore(sheet.subscribe, ofSheet, ofSheet) +
    useSyncExternalStore(said.subscribe, ofCritique, ofCritique)
  );
}

/** One panel; undefined when it has left the strip. A panel nobody touched stays the same object. */
export function usePanel(id: PanelId | null): Panel | undefined {
  const find = useCallback((sheet: Sheet) => sheet.panels.find((panel) => panel.id === id), [id]);
  return useSheet(find);
}

/** The sheet as it was read; null as long as it was not, and then nothing is known of the walk. */
export function useReview(): Review | null {
  return useStoreValue(useRoom().review);
}

/** Where what reads the walk has got to. */
export function useReader(): ReaderState {
  return useStoreValue(useRoom().review.reader);
}

/** What a selector picks of the review; repaints when the picked value is another one. */
export function useReviewed<T>(select: (review: Review | null) => T): T {
  const { review } = useRoom();
  const read = () => select(review.get());
  return useSyncExternalStore(review.subscribe, read, read);
}

/**
 * Whether this person may change the drawing; the hub decides, the page only follows. Nobody may once
 * the hub takes nothing more.
 */
export function useMayDraw(): boolean {
  return useMayWrite("drawing");
}

/** Whether this person may speak about the sheet: keep a remark on purpose, say. */
export function useMayCritique(): boolean {
  return useMayWrite("critique");
}

function useMayWrite(document: DocumentName): boolean {
  const room = useRoom();
  const may = mayWrite(useStoreValue(room.role), document);
  return useTakesInk() && may;
}

/** Is what is drawn from now on worth drawing? Repaints when that changes, not with every stroke. */
export function useTakesInk(): boolean {
  const { ink } = useRoom();
  const read = () => takesInk(ink.get());
  return useSyncExternalStore(ink.subscribe, read, read);
}
