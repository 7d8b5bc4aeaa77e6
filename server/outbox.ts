import { HUB_LIMITS } from "../shared/limits";
import type { Clock } from "./clock";

/** `news` are updates and can be made up for; `passing` is live ink and awareness, and can be lost. */
export type Urgency = "must" | "news" | "passing";

export interface Outbox {
  send(frame: Uint8Array, urgency: Urgency): void;
  /** ms since anything was sent. */
  silentMs(): number;
  /** Has a reader with unsent bytes stood still for too long? */
  isStuck(): boolean;
}

/** The little of a socket that sending needs. */
export interface OutboxSocket {
  readonly OPEN: number;
  readyState: number;
  bufferedAmount: number;
  send(frame: Uint8Array, flushed: () => void): void;
}

export interface OutboxDeps {
  readonly socket: OutboxSocket;
  readonly clock: Clock;
  /** The reader has caught up, and lacks the updates that were left out. */
  readonly onDrained: () => void;
}

/** What waits to be sent to one socket. However slow the reader is, it costs a constant memory. */
export function createOutbox({ socket, clock, onDrained }: OutboxDeps): Outbox {
  let behind = false;
  let sentAt = clock.now();
  let movedAt = clock.now();

  const flushed = () => {
    movedAt = clock.now();
    if (!behind || socket.bufferedAmount > HUB_LIMITS.outboxSoftBytes) return;
    behind = false;
    onDrained();
  };
  return {
    send(frame, urgency) {
      if (socket.readyState !== socket.OPEN) return;
      const unsent = socket.bufferedAmount;
      if (urgency === "passing" && (behind || unsent > HUB_LIMITS.outboxSoftBytes)) return;
      if (urgency === "news" && (behind || unsent > HUB_LIMITS.outboxHardBytes)) {
        behind = true;
        return;
      }
      if (unsent === 0) movedAt = clock.now();
      sentAt = clock.now();
      socket.send(frame, flushed);
    },
    silentMs: () => clock.now() - sentAt,
    isStuck: () => socket.bufferedAmount > 0 && clock.now() - movedAt > HUB_LIMITS.readerStillMs,
  };
}
