import type { View } from "../../lib/geometry";
import { decodeLive, type LiveMessage, StrokeError } from "../../lib/ink";
import type { Room } from "../_room";
import { createLiveBook, type LiveStroke, paperKey } from "./live-book";

/** The others' strokes in progress, for the whole board: heard once, told to the papers they are on. */
export interface LiveStrokes {
  on(panel: string, view: View): readonly LiveStroke[];
  watch(panel: string, view: View, onChange: () => void): () => void;
  /** A paper shows this stroke from the document now. */
  arrived(strokeId: string): void;
}

const ofRoom = new WeakMap<Room, LiveStrokes>();

/** The one ear of a room. It listens while at least one paper watches. */
export function liveStrokesOf(room: Room): LiveStrokes {
  const known = ofRoom.get(room);
  if (known !== undefined) return known;
  const made = openLiveStrokes(room);
  ofRoom.set(room, made);
  return made;
}

const SWEEP_MS = 1000;

function openLiveStrokes(room: Room): LiveStrokes {
  const book = createLiveBook();
  const watchers = new Map<string, Set<() => void>>();
  let stop: (() => void) | null = null;

  const tell = (keys: readonly string[]) => {
    for (const key of new Set(keys)) for (const onChange of watchers.get(key) ?? []) onChange();
  };
  const hear = (sender: number, payload: Uint8Array) => {
    const message = readLive(payload);
    if (message === null) return;
    tell(book.hear(sender, message, performance.now()));
    if (message.kind === "end" && isStored(room, message.strokeId)) {
      tell(book.arrived(message.strokeId)); // the document was quicker
    }
  };
  const listen = () => {
    const stops = [
      room.live.listen(hear),
      room.people.others.subscribe(() =>
        tell(book.keepOnly(new Set(room.people.others.get().map(({ client }) => client)))),
      ),
    ];
    const timer = setInterval(() => {
      if (book.size > 0) tell(book.expire(performance.now()));
    }, SWEEP_MS);
    return () => {
      clearInterval(timer);
      for (const end of stops) end();
    };
  };

  return {
    on: (panel, view) => (book.size === 0 ? [] : book.on(paperKey(panel, view))),
    arrived(strokeId) {
      if (book.size > 0) tell(book.arrived(strokeId));
    },
    watch(panel, view, onChange) {
      const key = paperKey(panel, view);
      const there = watchers.get(key) ?? new Set();
      watchers.set(key, there.add(onChange));
      stop ??= listen();
      return () => {
        there.delete(onChange);
        if (there.size === 0) watchers.delete(key);
        if (watchers.size > 0) return;
        stop?.();
        stop = null;
      };
    },
  };
}

/** What comes from others is hearsay: whatever does not read is simply not shown. */
function readLive(payload: Uint8Array): LiveMessage | null {
  try {
    return decodeLive(payload);
  } catch (error) {
    if (error instanceof StrokeError) return null;
    throw error;
  }
}

function isStored(room: Room, strokeId: string): boolean {
  return room.sheet
    .getSnapshot()
    .panels.some(({ ink }) => [...ink.side, ...ink.front].some(({ id }) => id === strokeId));
}
