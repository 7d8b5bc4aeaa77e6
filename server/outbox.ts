import { HUB_LIMITS } from "../shared/limits";
import type { Clock } from "./clock";

/**
 * `news` are updates, `presence` is awareness: both can be made up for. `passing` is live ink, and can
 * be lost.
 */
export type Urgency = "must" | "news" | "presence" | "passing";

/** What a reader lacks that was too slow for it. */
export interface Missed {
  readonly news: boolean;
  readonly presence: boolean;
}

export interface Outbox {
  send(frame: Uint8Array, urgency: Urgency): void;
  /** ms since anything was sent. */
  silentMs(): number;
  /** Has a reader with unsent bytes stood still for too long? */
  isStuck(): boolean;
  /** Is so much unsent that nothing more should be done for this reader? */
  isFull(): boolean;
  unsent(): number;
}

/** The little of a socket that sending needs. */
export interface OutboxSocket {
  readonly OPEN: number;
  readyState: number;
  bufferedAmount: number;
  send(data: Uint8Array, options: { readonly fin: boolean }, flushed: () => void): void;
}

/** What the socket writes to. It can hold back what is written, and give it out in one piece. */
export interface Line {
  cork(): void;
  uncork(): void;
}

export interface OutboxDeps {
  readonly socket: OutboxSocket;
  readonly line: Line;
  readonly clock: Clock;
  /** The reader has caught up, and lacks what was left out. */
  readonly onDrained: (missed: Missed) => void;
  /** So much is unsent that the page should not be read (true), or no longer (false). */
  readonly onFull?: (full: boolean) => void;
}

/** What waits to be sent to one socket. However slow the reader is, it costs a constant memory. */
export function createOutbox({ socket, line, clock, onDrained, onFull }: OutboxDeps): Outbox {
  const bundle = createBundle(line);
  let missed: Missed = { news: false, presence: false };
  let sentAt = clock.now();
  let movedAt = clock.now();
  let full = false;

  const weigh = () => {
    const limit = full ? HUB_LIMITS.outboxSoftBytes : HUB_LIMITS.outboxHardBytes;
    const now = socket.bufferedAmount > limit;
    if (now === full) return;
    full = now;
    onFull?.(full);
  };
  const flushed = () => {
    movedAt = clock.now();
    weigh();
    if (socket.bufferedAmount > HUB_LIMITS.outboxSoftBytes) return;
    if (!missed.news && !missed.presence) return;
    const lacks = missed;
    missed = { news: false, presence: false };
    onDrained(lacks);
  };
  /** Whether the frame has to be left out for now; what can be made up for is remembered. */
  const leavesOut = (urgency: Urgency): boolean => {
    const unsent = socket.bufferedAmount;
    const slow = missed.news || missed.presence || unsent > HUB_LIMITS.outboxSoftBytes;
    switch (urgency) {
      case "must":
        return false;
      case "news":
        if (!missed.news && unsent <= HUB_LIMITS.outboxHardBytes) return false;
        missed = { ...missed, news: true };
        return true;
      case "presence":
        if (slow) missed = { ...missed, presence: true };
        return slow;
      case "passing":
        return slow;
    }
  };
  return {
    send(frame, urgency) {
      if (socket.readyState !== socket.OPEN || leavesOut(urgency)) return;
      if (socket.bufferedAmount === 0) movedAt = clock.now();
      sentAt = clock.now();
      bundle.add(frame.length);
      for (const { part, fin } of fragments(frame)) socket.send(part, { fin }, flushed);
      bundle.weigh();
      weigh();
    },
    silentMs: () => clock.now() - sentAt,
    isStuck: () => socket.bufferedAmount > 0 && clock.now() - movedAt > HUB_LIMITS.readerStillMs,
    isFull: () => full,
    unsent: () => socket.bufferedAmount,
  };
}

/**
 * All that is sent in one turn goes out in one piece, for a call to the system costs more than a frame:
 * a commit may bring many updates for one page, and its SAVED. What is much is not held back.
 */
function createBundle(line: Line) {
  let bytes = 0;
  let isHeld = false;
  const give = () => {
    if (!isHeld) return;
    isHeld = false;
    line.uncork();
  };
  return {
    add(length: number): void {
      bytes = isHeld ? bytes + length : length;
      if (isHeld) return;
      isHeld = true;
      line.cork();
      process.nextTick(give);
    },
    weigh(): void {
      if (bytes >= HUB_LIMITS.fragmentBytes) give();
    },
  };
}

/** A large frame goes in pieces: a reader who takes one of them after another does not stand still. */
function fragments(frame: Uint8Array): { part: Uint8Array; fin: boolean }[] {
  const size = HUB_LIMITS.fragmentBytes;
  if (frame.length <= size) return [{ part: frame, fin: true }];
  const count = Math.ceil(frame.length / size);
  return Array.from({ length: count }, (_, index) => ({
    part: frame.subarray(index * size, (index + 1) * size),
    fin: index === count - 1,
  }));
}
