import * as Y from "yjs";
import {
  type CritiqueView,
  openCritiqueView,
  openSheetView,
  openUndo,
  type SheetView,
  type UndoStack,
} from "../../lib/sheet";
import { encodeLive } from "../../shared/protocol";
import type { Role } from "../../shared/role";
import { type DocumentLine, openDocumentLine } from "./document-line";
import { type InkState, inkStateOf, losesInk, worseInkState } from "./ink-state";
import { openPeople, type People } from "./people";
import { openReviewDesk, type ReviewDesk } from "./review-desk";
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
  /** The stroke under the pen, passed on and never stored. */
  readonly live: {
    send(payload: Uint8Array): void;
    listen(onLive: (sender: number, payload: Uint8Array) => void): () => void;
  };
  close(): void;
}

/**
 * Opens a sheet that this browser holds a grant for. Whoever opens it closes it.
 * `role` is what the hub said when asked; its HELLO says it again, and later changes.
 */
export function openRoom(sheetId: string, firstRole: Role): Room {
  const drawing = new Y.Doc();
  const critique = new Y.Doc();
  const base = `${location.origin.replace(/^http/, "ws")}/sync/${sheetId}`;
  const onUnopened = askWayIn(sheetId, () => {
    for (const line of [drawingLine, critiqueLine]) line.shutOut();
  });
  const client = drawing.clientID;
  const drawingLine = openDocumentLine(drawing, base, "drawing", {
    ...{ client, present: true, onUnopened },
  });
  const critiqueLine = openDocumentLine(critique, base, "critique", {
    ...{ client, present: false, onUnopened },
  });
  const sheet = openSheetView(drawing);
  const said = openCritiqueView(critique);
  const review = openReviewDesk(sheet, said);
  const undo = openUndo([drawing, critique]);
  const people = openPeople(drawingLine);
  const role = createStore<Role>(firstRole);
  const ready = createStore(false);
  const ink = createStore<InkState>("opening");
  const shutBy = createStore<ShutCause | null>(null);

  let generation: number | null = null;
  const follow = () => {
    const lines = [drawingLine.state.get(), critiqueLine.state.get()] as const;
    if (lines.every((line) => line.synced)) ready.set(true);
    role.set(lines[0].role ?? role.get());
    // The sheet was put back to an older state: what this page knows is void. Ink that is not saved
    // is warned of by the browser before it goes.
    const told = lines[0].hello?.generation ?? generation;
    if (generation !== null && told !== generation) location.reload();
    generation = told;
    const code = lines.find(({ closed }) => closed !== null)?.closed ?? null;
    shutBy.set(code === null ? null : shutCauseOf(code));
    const [one, other] = lines.map((line) => inkStateOf(line, ready.get()));
    ink.set(worseInkState(one ?? "opening", other ?? "opening"));
  };
  const stops = [drawingLine, critiqueLine].map((line: DocumentLine) =>
    line.state.subscribe(follow),
  );
  const warn = (leaving: BeforeUnloadEvent) => {
    const lines = [drawingLine.state.get(), critiqueLine.state.get()];
    if (lines.some((line) => losesInk(line, ready.get()))) leaving.preventDefault();
  };
  window.addEventListener("beforeunload", warn);

  return {
    sheetId,
    drawing,
    critique,
    sheet,
    said,
    review,
    undo,
    people,
    role,
    ink,
    shutBy,
    ready,
    live: {
      send: (payload) => drawingLine.send(encodeLive(payload)),
      listen: (onLive) => drawingLine.onLive(onLive),
    },
    close() {
      window.removeEventListener("beforeunload", warn);
      for (const stop of stops) stop();
      people.close();
      undo.close();
      review.close();
      sheet.close();
      said.close();
      drawingLine.close();
      critiqueLine.close();
      drawing.destroy();
      critique.destroy();
    },
  };
}
