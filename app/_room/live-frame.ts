import { MESSAGE } from "../../shared/protocol";

/** Wraps a live payload for the hub, which stamps it with its sender and passes it on. */
export function liveFrame(payload: Uint8Array): Uint8Array {
  const frame = new Uint8Array(payload.length + 1);
  frame[0] = MESSAGE.live; // one byte: message numbers below 128 are their own varint
  frame.set(payload, 1);
  return frame;
}
