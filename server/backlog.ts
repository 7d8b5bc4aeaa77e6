import { HUB_LIMITS } from "../shared/limits";
import type { NewUpdate } from "./store/document-records";

/** How much waits for the disk, and whether that is so much that nothing more should be read. */
export interface Backlog {
  take(update: NewUpdate): void;
  /** Takes off what is stored, and says how many bytes that was. */
  shed(updates: readonly NewUpdate[]): number;
  /** The oldest of it has waited for too long, or no longer does. */
  stall(stalled: boolean): void;
  updates(): number;
  bytes(): number;
}

export function createBacklog(onPressure: (high: boolean) => void): Backlog {
  let bytes = 0;
  let updates = 0;
  let heavy = false;
  let stalled = false;
  let pressed = false;
  const look = () => {
    const limit = HUB_LIMITS.backlogBytes;
    heavy = heavy ? bytes > limit / 2 : bytes > limit;
    if (pressed === (heavy || stalled)) return;
    pressed = heavy || stalled;
    onPressure(pressed);
  };
  return {
    take(update) {
      bytes += update.bytes.length;
      updates++;
      look();
    },
    shed(stored) {
      const shed = sizeOf(stored);
      bytes -= shed;
      updates -= stored.length;
      look();
      return shed;
    },
    stall(is) {
      stalled = is;
      look();
    },
    updates: () => updates,
    bytes: () => bytes,
  };
}

function sizeOf(list: readonly NewUpdate[]): number {
  return list.reduce((sum, { bytes }) => sum + bytes.length, 0);
}
