import * as Y from "yjs";
import {
  defaultBrief,
  layOut,
  newPanelId,
  openUndo,
  prepareCritique,
  readSheet,
  type Sheet,
  type UndoStack,
  writeSheet,
} from "../../lib/sheet";
import { dice } from "./dice";

/** One person at a sheet: both documents, and their own undo. */
export interface Peer {
  readonly doc: Y.Doc;
  readonly critique: Y.Doc;
  readonly undo: UndoStack;
  sheet(): Sheet;
}

/** People who have the same sheet open and have not met since. */
export function peers(count: number, sheet: Sheet = layOut(defaultBrief, ids())): Peer[] {
  const doc = new Y.Doc();
  const critique = new Y.Doc();
  writeSheet(doc, sheet);
  prepareCritique(critique);
  return Array.from({ length: count }, (_, i) => peerWith(doc, critique, i + 1));
}

/** New ids, the same in every run. */
export function ids(seed = 7): () => string {
  const { bytes } = dice(seed);
  return () => newPanelId(bytes);
}

/** Brings what each has to everyone. */
export function meet(people: readonly Peer[]): void {
  for (const part of ["doc", "critique"] as const) {
    for (const from of people) for (const to of people) if (from !== to) pass(from[part], to[part]);
  }
}

function pass(from: Y.Doc, to: Y.Doc): void {
  Y.applyUpdate(to, Y.encodeStateAsUpdate(from, Y.encodeStateVector(to)), "from afar");
}

function peerWith(source: Y.Doc, critiqueSource: Y.Doc, clientId: number): Peer {
  const doc = new Y.Doc();
  const critique = new Y.Doc();
  doc.clientID = clientId; // chance decides who wins; a test wants the same winner every time
  critique.clientID = clientId;
  pass(source, doc);
  pass(critiqueSource, critique);
  return { doc, critique, undo: openUndo([doc, critique]), sheet: () => readSheet(doc) };
}
