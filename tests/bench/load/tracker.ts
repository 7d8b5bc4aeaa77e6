import type { Mark } from "./strokes";

/** Who has sent what and when, and how many still have to see it. */
export interface Tracker {
  sent(mark: Mark): void;
  /** Of one receiver, who counts each stroke once however often it comes. */
  receiver(own: number): (mark: Mark) => void;
  sentCount(): number;
  seenCount(): number;
  /** From sending to the last receiver's having it, ms, in order of size. */
  times(): readonly number[];
}

export function createTracker(receivers: number, onSeenByAll?: (sender: number) => void): Tracker {
  const waiting = new Map<number, { readonly at: number; left: number }>();
  const times: number[] = [];
  let sentCount = 0;
  const keyOf = ({ sender, seq }: Mark) => sender * 1e6 + seq;
  const seen = (mark: Mark) => {
    const one = waiting.get(keyOf(mark));
    if (one === undefined || --one.left > 0) return;
    waiting.delete(keyOf(mark));
    times.push(performance.now() - one.at);
    onSeenByAll?.(mark.sender);
  };
  return {
    sent(mark) {
      waiting.set(keyOf(mark), { at: performance.now(), left: receivers });
      sentCount++;
    },
    receiver(own) {
      const last = new Map<number, number>();
      return (mark) => {
        if (mark.sender === own || mark.seq <= (last.get(mark.sender) ?? 0)) return;
        last.set(mark.sender, mark.seq);
        seen(mark);
      };
    },
    sentCount: () => sentCount,
    seenCount: () => times.length,
    times: () => times.sort((a, b) => a - b),
  };
}

/** A percentile of numbers in order of size. */
export function percentile(ordered: readonly number[], share: number): number {
  return ordered[Math.min(ordered.length - 1, Math.floor(share * ordered.length))] ?? Number.NaN;
}
