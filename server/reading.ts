import type { WebSocket } from "ws";

/** Why a socket is not read: its document is loading, it is ahead of its pace, or the disk is behind. */
export type Hold = "loading" | "pace" | "disk";

/** Reading stops at the first reason and goes on when the last is gone; TCP slows the page. */
export function createReading(socket: WebSocket) {
  const holds = new Set<Hold>();
  return {
    hold(why: Hold): void {
      holds.add(why);
      socket.pause();
    },
    release(why: Hold): void {
      if (holds.delete(why) && holds.size === 0) socket.resume();
    },
    releaseAll(): void {
      holds.clear();
      socket.resume();
    },
  };
}
