import type { Clock } from "../../server/clock";

/** A clock turned by hand. */
export interface HandClock extends Clock {
  /** Moves on by so many ms and runs what falls due, in order. */
  pass(ms: number): void;
}

export function handClock(): HandClock {
  let now = 1_000_000;
  const due = new Set<{ readonly at: number; readonly run: () => void }>();
  return {
    now: () => now,
    after(ms, run) {
      const entry = { at: now + ms, run };
      due.add(entry);
      return () => {
        due.delete(entry);
      };
    },
    pass(ms) {
      const until = now + ms;
      for (;;) {
        const next = [...due].filter(({ at }) => at <= until).sort((a, b) => a.at - b.at)[0];
        if (next === undefined) break;
        due.delete(next);
        now = next.at;
        next.run();
      }
      now = until;
    },
  };
}

/** Something that waits until a test lets it go on. */
export function gate(): { readonly passed: Promise<void>; open(): void } {
  let open = () => {};
  const passed = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { passed, open: () => open() };
}
