import * as Y from "yjs";
import {
  type CritiqueView,
  type HandedSheet,
  openCritiqueView,
  openSheetView,
  openUndo,
  type SheetView,
  type UndoStack,
} from "../../lib/sheet";
import { encodeLive } from "../../shared/protocol";
import type { Role } from "../../shared/role";
import { openDocumentLine } from "./document-line";
import { type InkState, leavesUnsaved, sheetInkState } from "./ink-state";
import type { Drawer } from "./local/drawer";
import type { KeptWork } from "./local/kept-work";
import { openPeople, type People } from "./people";
import { openReviewDesk, type ReviewDesk } from "./review-desk";
import { doSetAsideAgain, type FallenWhy, sheetWith, type Told, toldOfShut } from "./set-aside";
import { type ShutCause, shutCauseOf } from "./shut-cause";
import { createStore, type Store } from "./store";
import { askWayIn } from "./way-in";

/** An open sheet: its documents, its line to the hub, and who else is there. */
export interface Room {
  readonly sheetId: string;
  readonly drawing: Y.Doc;
  readonly critique: Y.Doc;
  readonly sheet: SheetView;
  /** What is said about the sheet. */
  readonly said: CritiqueView;
  readonly review: ReviewDesk;
  readonly undo: UndoStack;
  readonly people: People;
  readonly role: Store<Role>;
  readonly ink: Store<InkState>;
  /** Why the ink is `shut`; null while it is not. */
  readonly shutBy: Store<ShutCause | null>;
  /** The strip has been fetched once; before that there is nothing to show. */
  readonly ready: Store<boolean>;
  /** Its documents are void, and why: the sheet is to be opened afresh. Null while all is well. */
  readonly fallen: Store<FallenWhy | null>;
  /** What became of work that the sheet did not take as it was; null while there is nothing to tell. */
  readonly told: Store<Told | null>;
  /** Heard. What was lost is thrown away with it: whoever calls this has saved it, or does not want it. */
  forgetTold(): void;
  /** The sheet as it is, with what could not be done on it: to be saved as a file. */
  sheetWithLost(): HandedSheet;
  /** All work that is not saved, as plain values, in the drawer and in hand. Then only `close` is left. */
  setAside(): readonly KeptWork[];
  /** The stroke under the pen, passed on and never stored. */
  readonly live: {
    send(payload: Uint8Array): void;
    listen(onLive: (sender: number, payload: Uint8Array) => void): () => void;
  };
  close(): void;
}

export interface RoomOptions {
  readonly sheetId: string;
  /** What the hub said when asked; its HELLO says it again, and later changes. */
  readonly role: Role;
  readonly drawer: Drawer;
  /** Work from before: from the drawer, or from the room that fell. */
  readonly earlier: Promise<readonly KeptWork[]>;
  /** Why the room before this one fell. */
  readonly fellBy: FallenWhy | null;
}

/** Opens a sheet that this browser holds a grant for. Whoever opens it closes it. */
export function openRoom(options: RoomOptions): Room {
  const { sheetId, role: firstRole, drawer, earlier, fellBy } = options;
  const drawing = new Y.Doc();
  const critique = new Y.Doc();
  const lines = openLines({ sheetId, drawing, critique, drawer, earlier });
  const both = [lines.drawing, lines.critique] as const;
  const sheet = openSheetView(drawing);
  const said = openCritiqueView(critique);
  const review = openReviewDesk(sheet, said);
  const undo = openUndo([drawing, critique]);
  const people = openPeople(lines.drawing);
  const role = createStore<Role>(firstRole);
  const ready = createStore(false);
  const ink = createStore<InkState>("opening");
  const shutBy = createStore<ShutCause | null>(null);
  const fallen = createStore<FallenWhy | null>(null);
  const told = createStore<Told | null>(null);

  const open = () => {
    ready.set(true);
    told.set(doSetAsideAgain({ drawing, critique, lines, drawer, role: role.get(), fellBy }));
  };
  /** Nothing is handed over any more: what waits stays in the drawer, and is offered as a file. */
  const tellShut = () => {
    const left = both.flatMap((line) => line.takeUnsaved());
    if (left.length > 0) told.set(toldOfShut(told.get(), left));
  };
  const follow = () => {
    const states = both.map((line) => line.state.get());
    role.set(states[0]?.role ?? role.get());
    if (!ready.get() && states.every(({ synced }) => synced)) open();
    const refused = states.find((line) => line.refused !== null)?.refused ?? null;
    if (states.some(({ outdated }) => outdated)) fallen.set("generation");
    else if (refused !== null && fallen.get() === null) fallen.set(refused.code);
    const code = states.find(({ closed }) => closed !== null)?.closed ?? null;
    shutBy.set(code === null ? null : shutCauseOf(code));
    if (code !== null) tellShut();
    const inHand = review.held.get();
    ink.set(sheetInkState(states, { everSynced: ready.get(), lost: hasLost(told.get()), inHand }));
  };
  const followed = [...both.map(({ state }) => state), told, review.held];
  const stops = followed.map((store) => store.subscribe(follow));
  const warn = (leaving: BeforeUnloadEvent) => {
    const unsaved = both.some((line) => leavesUnsaved(line.state.get()));
    if (unsaved || hasLost(told.get()) || review.held.get()) leaving.preventDefault();
  };
  window.addEventListener("beforeunload", warn);

  return {
    ...{ sheetId, drawing, critique, sheet, said, review, undo, people, role, ink, shutBy },
    ...{ ready, fallen, told },
    forgetTold() {
      for (const { key } of told.get()?.lost ?? []) drawer.drop(key);
      told.set(null);
    },
    sheetWithLost: () =>
      sheetWith({ ...sheet.getSnapshot(), ...said.getSnapshot() }, told.get()?.lost ?? []),
    setAside() {
      const work = [...both.flatMap((line) => line.setAside()), ...(told.get()?.lost ?? [])];
      for (const one of work) drawer.keep(one);
      return work;
    },
    live: {
      send: (payload) => lines.drawing.send(encodeLive(payload)),
      listen: (onLive) => lines.drawing.onLive(onLive),
    },
    close() {
      window.removeEventListener("beforeunload", warn);
      for (const stop of stops) stop();
      for (const part of [people, undo, review, sheet, said, ...both]) part.close();
      drawing.destroy();
      critique.destroy();
    },
  };
}

const hasLost = (told: Told | null): boolean => told !== null && told.lost.length > 0;

interface LinesDeps extends Omit<RoomOptions, "role" | "fellBy"> {
  readonly drawing: Y.Doc;
  readonly critique: Y.Doc;
}

function openLines({ sheetId, drawing, critique, drawer, earlier }: LinesDeps) {
  const base = `${location.origin.replace(/^http/, "ws")}/sync/${sheetId}`;
  const shared = {
    client: drawing.clientID,
    drawer,
    onUnopened: askWayIn(sheetId, () => {
      for (const line of Object.values(lines)) line.shutOut();
    }),
  };
  const of = (name: string) =>
    earlier.then((work) => work.filter(({ document }) => document === name));
  const lines = {
    drawing: openDocumentLine(drawing, base, "drawing", {
      ...{ ...shared, present: true, earlier: of("drawing") },
    }),
    critique: openDocumentLine(critique, base, "critique", {
      ...{ ...shared, present: false, earlier: of("critique") },
    }),
  };
  return lines;
}
