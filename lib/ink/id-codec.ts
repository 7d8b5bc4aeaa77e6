import type { BitReader, BitWriter } from "./bits";
import { StrokeError } from "./stroke-error";

const ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
/** The longest id, in characters. Ours have eight. */
export const MAX_ID_LENGTH = 63;

/** Whether this may be an id: 1 to 63 base64url characters. */
export function isId(value: unknown): value is string {
  return typeof value === "string" && /^[A-Za-z0-9_-]{1,63}$/.test(value);
}

/** An id in 6 bits a character, its length before it. Errors: RangeError unless `isId`. */
export function writeId(writer: BitWriter, id: string): void {
  if (!isId(id)) {
    throw new RangeError(`an id needs 1 to ${MAX_ID_LENGTH} base64url characters, got "${id}"`);
  }
  writer.bits(id.length, 6);
  for (const character of id) writer.bits(ALPHABET.indexOf(character), 6);
}

/** Errors: StrokeError "truncated", or "damaged" for an id of no length. */
export function readId(reader: BitReader): string {
  const length = reader.bits(6);
  if (length === 0) throw new StrokeError("damaged", "an id has no characters");
  let id = "";
  for (let i = 0; i < length; i++) id += ALPHABET.charAt(reader.bits(6));
  return id;
}

/** Six bytes (or any multiple of three) as base64url characters. */
export function idFromBytes(bytes: Uint8Array): string {
  let id = "";
  for (let i = 0; i + 2 < bytes.length; i += 3) {
    const three = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    for (const shift of [18, 12, 6, 0]) id += ALPHABET.charAt((three >> shift) & 63);
  }
  return id;
}
