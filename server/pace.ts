import type { Clock } from "./clock";

/** How much may pass: so much a second, and so much at once after a quiet while. */
export interface Allowance {
  readonly perSecond: number;
  readonly burst: number;
}

/** A bucket that fills by the clock. */
export interface Pace {
  /** Takes so much out. Below zero means that the sender is ahead of its pace. */
  take(amount: number): void;
  /** ms until the bucket is no longer below zero; 0 if it is not. */
  waitMs(): number;
  /** Has nothing been taken for so long that it is as it was made? */
  isFull(): boolean;
}

export function createPace({ perSecond, burst }: Allowance, clock: Clock): Pace {
  let left = burst;
  let at = clock.now();
  const fill = () => {
    const now = clock.now();
    left = Math.min(burst, left + (Math.max(0, now - at) * perSecond) / 1000);
    at = now;
  };
  return {
    take(amount) {
      fill();
      left -= amount;
    },
    waitMs() {
      fill();
      return left >= 0 ? 0 : Math.ceil((-left * 1000) / perSecond);
    },
    isFull() {
      fill();
      return left >= burst;
    },
  };
}

/**
 * Passes things on at a pace. What comes faster waits, and only the newest: it takes the place of the
 * one that waited before it. So the last one always arrives, and nothing piles up.
 */
export interface NewestFirst<Thing> {
  offer(thing: Thing): void;
  stop(): void;
}

export function createNewestFirst<Thing>(
  allowance: Allowance,
  clock: Clock,
  pass: (thing: Thing) => void,
  onReplaced: () => void = () => {},
): NewestFirst<Thing> {
  const pace = createPace({ ...allowance, burst: allowance.burst - 1 }, clock);
  let held: { thing: Thing } | null = null;
  let callOff: (() => void) | null = null;
  const send = (thing: Thing) => {
    pace.take(1);
    pass(thing);
  };
  const release = () => {
    callOff = null;
    const { thing } = held ?? {};
    held = null;
    if (thing !== undefined) send(thing);
  };
  return {
    offer(thing) {
      const waitMs = pace.waitMs();
      if (waitMs === 0 && held === null) return send(thing);
      if (held !== null) onReplaced();
      held = { thing };
      callOff ??= clock.after(waitMs, release);
    },
    stop() {
      callOff?.();
      held = null;
    },
  };
}
