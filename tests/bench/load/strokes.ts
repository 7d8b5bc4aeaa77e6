import { randomBytes } from "node:crypto";
import * as Y from "yjs";
import { encodeSync, SYNC } from "../../../shared/protocol";

/** Whose stroke it is, and which of theirs, counted from 1. */
export interface Mark {
  readonly sender: number;
  readonly seq: number;
}

const MAGIC = randomBytes(8);
const HEADING = 14; // bytes: the eight that no chance brings about, sender, number
const SENDER_DIGITS = 3;
const ID_DIGITS = 8; // as our ids have letters

/** An id as long as ours, in which the mark stands. */
export function idOf({ sender, seq }: Mark): string {
  const digits = (number: number, count: number) => number.toString(36).padStart(count, "0");
  return digits(sender, SENDER_DIGITS) + digits(seq, ID_DIGITS - SENDER_DIGITS);
}

export function markIn(id: string): Mark {
  return {
    sender: Number.parseInt(id.slice(0, SENDER_DIGITS), 36),
    seq: Number.parseInt(id.slice(SENDER_DIGITS), 36),
  };
}

/** Bytes that cannot be compressed, as packed ink cannot, with the mark in front. */
export function inkOf({ sender, seq }: Mark, bytes: number): Uint8Array {
  const ink = randomBytes(bytes);
  MAGIC.copy(ink);
  ink.writeUInt16BE(sender, MAGIC.length);
  ink.writeUInt32BE(seq, MAGIC.length + 2);
  return new Uint8Array(ink);
}

/** Every stroke inside a frame, told without reading the frame as a page would. */
export function scan(frame: Buffer, found: (mark: Mark) => void): void {
  let at = frame.indexOf(MAGIC);
  while (at !== -1 && at + HEADING <= frame.length) {
    const sender = frame.readUInt16BE(at + MAGIC.length);
    found({ sender, seq: frame.readUInt32BE(at + MAGIC.length + 2) });
    at = frame.indexOf(MAGIC, at + HEADING);
  }
}

/** What one page sends that draws so many strokes, made beforehand. */
export function updatesOf(sender: number, strokes: number, bytes: number): Uint8Array[] {
  const doc = new Y.Doc();
  const updates: Uint8Array[] = [];
  doc.on("update", (update: Uint8Array) => updates.push(update));
  for (let seq = 1; seq <= strokes; seq++) {
    doc.getMap("strokes").set(idOf({ sender, seq }), inkOf({ sender, seq }, bytes));
  }
  doc.destroy();
  return updates;
}

export function frameOfUpdate(update: Uint8Array): Uint8Array {
  return encodeSync(SYNC.update, update);
}
