import type { WebSocket } from "ws";

/**
 * Why a socket is not read: its document is loading, it is ahead of its pace, the disk is behind, it
 * does not read what it asked for itself, its right to the sheet is being looked at again, what was read
 * waits to be done, or the hub is about to go.
 */
export type Hold = "loading" | "pace" | "disk" | "outbox" | "access" | "parked" | "going";

/** Reading stops at the first reason and goes on when the last is gone; TCP slows the page. */
export function createReading(socket: WebSocket) {
  const holds = new Set<Hold>();
  let over = false;
  return {
    hold(why: Hold): void {
      if (over) return;
      holds.add(why);
      socket.pause();
    },
    release(why: Hold): void {
      if (holds.delete(why) && holds.size === 0) socket.resume();
    },
    /** A page that is not read cannot be heard to live. */
    isHeld: () => holds.size > 0,
    /** For good: whoever is sent away is read until they have said goodbye. */
    releaseAll(): void {
      over = true;
      holds.clear();
      socket.resume();
    },
  };
}
