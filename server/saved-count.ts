import { encodeRefused, encodeSaved } from "../shared/hub-message";
import type { Member, Refusal } from "./room";

/** Counts a connection's update frames, and tells it which are committed and which changed nothing. */
export interface SavedCount {
  /** The number of the frame that has just come. */
  next(): number;
  /** The frame, and with it every one before, is committed. */
  settle(frame: number): void;
  refuse(frame: number, refusal: Refusal): void;
}

export function createSavedCount(send: Member["send"]): SavedCount {
  let received = 0;
  let saved = 0;
  let told = 0;
  let refused = Number.POSITIVE_INFINITY;
  /** Once for all that one commit brought, and only the highest number. */
  const tell = () => {
    if (saved === told) return;
    told = saved;
    send(encodeSaved(saved), "must");
  };
  return {
    next: () => ++received,
    settle(frame) {
      // What came after a refused frame may have been built on it: the page must not hear "saved".
      if (frame > refused) return;
      saved = Math.max(saved, frame);
      queueMicrotask(tell);
    },
    refuse(frame, { code, message }) {
      refused = Math.min(refused, frame);
      send(encodeRefused({ frame, code, message }), "must");
    },
  };
}
