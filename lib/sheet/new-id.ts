import { idFromBytes } from "../ink";
import type { PanelId, StrokeId } from "./sheet";

/** Gives so many random bytes: `(count) => crypto.getRandomValues(new Uint8Array(count))`. */
export type Chance = (count: number) => Uint8Array;

const ID_BYTES = 6; // eight base64url characters; 48 bits: a sheet of 10,000 meets itself once in 5 million

/** A new panel's id: eight random base64url characters. Errors: RangeError for too few bytes. */
export function newPanelId(chance: Chance): PanelId {
  return newId(chance);
}

/** A new stroke's id, likewise. */
export function newStrokeId(chance: Chance): StrokeId {
  return newId(chance);
}

/** A new entry's id in the critique, likewise. */
export function newEntryId(chance: Chance): string {
  return newId(chance);
}

function newId(chance: Chance): string {
  const bytes = chance(ID_BYTES);
  if (bytes.length !== ID_BYTES) {
    throw new RangeError(`an id needs ${ID_BYTES} random bytes, got ${bytes.length}`);
  }
  return idFromBytes(bytes);
}
