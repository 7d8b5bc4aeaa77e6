import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";

/** The first number of every frame. `PROTOCOL.md` says what each means. */
export const MESSAGE = {
  sync: 0,
  awareness: 1,
  queryAwareness: 3,
  live: 4,
  hello: 64,
  saved: 65,
  refused: 66,
  storage: 67,
  going: 68,
  role: 69,
  beat: 70,
  lead: 71,
  time: 72,
} as const;

/** The second number of a sync frame. */
export const SYNC = { step1: 0, step2: 1, update: 2 } as const;

export const PROTOCOL_VERSION = 1;

/**
 * Is this a frame that carries an update? Page and hub count these, each for itself, from 1 on every
 * connection; SAVED and REFUSED name them by that number. Only the first two bytes are looked at, so
 * that both sides count a damaged frame alike.
 */
export function isUpdateFrame(frame: Uint8Array): boolean {
  return frame[0] === MESSAGE.sync && (frame[1] === SYNC.step2 || frame[1] === SYNC.update);
}

/** One client's presence inside an awareness frame. `state` is JSON text, "null" for one who left. */
export interface AwarenessEntry {
  readonly client: number;
  readonly clock: number;
  readonly state: string;
}

/** A frame of a type and whatever the writer puts behind it. */
export function frameOf(type: number, write: (encoder: encoding.Encoder) => void): Uint8Array {
  return encoding.encode((encoder) => {
    encoding.writeVarUint(encoder, type);
    write(encoder);
  });
}

/** Put together in one piece of the right size: most frames are of this type. */
export function encodeSync(kind: number, body: Uint8Array): Uint8Array {
  const heading = [MESSAGE.sync, kind];
  let length = body.length;
  for (; length > LOW_BITS; length = Math.floor(length / (LOW_BITS + 1))) {
    heading.push((length & LOW_BITS) | MORE);
  }
  heading.push(length);
  const frame = new Uint8Array(heading.length + body.length);
  frame.set(heading);
  frame.set(body, heading.length);
  return frame;
}

const LOW_BITS = 127; // of each byte of a number; the bit above says that more follow
const MORE = 128;

export function encodeAwareness(entries: readonly AwarenessEntry[]): Uint8Array {
  const body = encoding.encode((encoder) => {
    encoding.writeVarUint(encoder, entries.length);
    for (const { client, clock, state } of entries) {
      encoding.writeVarUint(encoder, client);
      encoding.writeVarUint(encoder, clock);
      encoding.writeVarString(encoder, state);
    }
  });
  return frameOf(MESSAGE.awareness, (encoder) => encoding.writeVarUint8Array(encoder, body));
}

/** Errors: throws where the bytes end too soon. */
export function readAwareness(body: Uint8Array): AwarenessEntry[] {
  const decoder = decoding.createDecoder(body);
  const entries: AwarenessEntry[] = [];
  for (let left = decoding.readVarUint(decoder); left > 0; left--) {
    const client = decoding.readVarUint(decoder);
    const clock = decoding.readVarUint(decoder);
    entries.push({ client, clock, state: decoding.readVarString(decoder) });
  }
  return entries;
}

/** What a page sends while the pen is down. The payload is the page's own affair. */
export function encodeLive(payload: Uint8Array): Uint8Array {
  return frameOf(MESSAGE.live, (encoder) => encoding.writeUint8Array(encoder, payload));
}

/** The same, as the hub passes it on: with the client id of the sender in front. */
export function encodeRelayedLive(client: number, payload: Uint8Array): Uint8Array {
  return frameOf(MESSAGE.live, (encoder) => {
    encoding.writeVarUint(encoder, client);
    encoding.writeUint8Array(encoder, payload);
  });
}

/** Somebody else's live ink. The decoder stands behind the type. */
export function readRelayedLive(decoder: decoding.Decoder): {
  readonly client: number;
  readonly payload: Uint8Array;
} {
  return {
    client: decoding.readVarUint(decoder),
    payload: decoding.readTailAsUint8Array(decoder),
  };
}

/** What a page may say to the hub, read as far as the hub needs it. */
export type PageMessage =
  | { readonly kind: "step1"; readonly stateVector: Uint8Array }
  | { readonly kind: "update"; readonly first: boolean; readonly update: Uint8Array }
  | { readonly kind: "awareness"; readonly body: Uint8Array }
  | { readonly kind: "query-awareness" }
  | { readonly kind: "live"; readonly payload: Uint8Array };

/**
 * Reads one frame of a page.
 *
 * Errors:  throws on a frame that ends too soon or is of a type pages do not send
 */
export function readPageMessage(frame: Uint8Array): PageMessage {
  const decoder = decoding.createDecoder(frame);
  const type = decoding.readVarUint(decoder);
  switch (type) {
    case MESSAGE.sync:
      return readSync(decoder);
    case MESSAGE.awareness:
      return { kind: "awareness", body: decoding.readVarUint8Array(decoder) };
    case MESSAGE.queryAwareness:
      return { kind: "query-awareness" };
    case MESSAGE.live:
      return { kind: "live", payload: decoding.readTailAsUint8Array(decoder) };
    default:
      throw new RangeError(`a page sends types 0, 1, 3 and 4, got ${type}`);
  }
}

function readSync(decoder: decoding.Decoder): PageMessage {
  const kind = decoding.readVarUint(decoder);
  const body = decoding.readVarUint8Array(decoder);
  if (kind === SYNC.step1) return { kind: "step1", stateVector: body };
  if (kind === SYNC.step2) return { kind: "update", first: true, update: body };
  if (kind === SYNC.update) return { kind: "update", first: false, update: body };
  throw new RangeError(`a sync frame is of kind 0, 1 or 2, got ${kind}`);
}
