import type * as Y from "yjs";
import type { HubClient } from "./hub-client";

const IN_FLIGHT = 30; // strokes a page draws ahead of what is saved, so that a kill always meets some
const STROKE_BYTES = 4000; // large ones, so that a commit takes a while and a kill can fall into it

/** Someone who draws until the line is cut. */
export interface DrawingHand {
  /** Strokes of others that came into this page. */
  readonly seen: ReadonlySet<string>;
  /** What this page would have called saved. */
  acknowledged(): string[];
  stop(): void;
}

/** Draws stroke after stroke, and knows of each which frame carried it. */
export function drawing(
  page: HubClient,
  name: string,
  { strokeBytes = STROKE_BYTES, everyMs = 0 } = {},
): DrawingHand {
  const frames = new Map<string, number>();
  const seen = new Set<string>();
  page.doc.getMap("strokes").observe((event: Y.YMapEvent<unknown>) => {
    if (event.transaction.local) return;
    for (const key of event.keysChanged) seen.add(String(key));
  });
  let drawn = 0;
  let over = false;
  const next = () => {
    if (over || page.closed !== null) return;
    if (everyMs > 0) setTimeout(next, everyMs);
    else setImmediate(next);
    if (page.sent - page.saved >= IN_FLIGHT) return;
    const id = `${name} ${++drawn}`;
    const bytes = Uint8Array.from({ length: strokeBytes }, (_, index) => (index * drawn) % 251);
    const before = page.sent;
    page.draw(id, bytes);
    if (page.sent > before) frames.set(id, page.sent); // else the line is already falling
  };
  next();
  return {
    seen,
    acknowledged: () => [...frames].filter(([, frame]) => frame <= page.saved).map(([id]) => id),
    stop() {
      over = true;
    },
  };
}
