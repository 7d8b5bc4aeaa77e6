/**
 * Bytes as a stranger writes them, who has read what travels and nothing of our code: on purpose none of
 * this comes from the hub's own encoder, or from the library that it stands on.
 */
export type Bytes = readonly number[];

/** Seven bits a byte, the lowest first, the eighth bit for "there is more". Up to 2^53 - 1. */
export function varuint(value: number): Bytes {
  const bytes: number[] = [];
  let left = value;
  for (; left > 0x7f; left = Math.floor(left / 0x80)) bytes.push((left % 0x80) | 0x80);
  bytes.push(left);
  return bytes;
}

/** A length, and so many bytes. */
export function sized(bytes: ArrayLike<number>): Bytes {
  return [...varuint(bytes.length), ...Array.from(bytes)];
}

export function text(value: string): Bytes {
  return sized(new TextEncoder().encode(value));
}

/** Reads a varuint; answers it and where it ends. */
export function readVaruint(bytes: Uint8Array, from: number): { value: number; end: number } {
  let value = 0;
  let scale = 1;
  for (let at = from; at < bytes.length; at++) {
    const byte = bytes[at] ?? 0;
    value += (byte & 0x7f) * scale;
    scale *= 0x80;
    if (byte < 0x80) return { value, end: at + 1 };
  }
  throw new RangeError("a number ends with the bytes");
}
