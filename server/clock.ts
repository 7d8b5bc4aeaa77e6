/** Time, handed in: a test turns it by hand. */
export interface Clock {
  /** ms since 1970. */
  now(): number;
  /** Runs once after so many ms; call what it returns to call it off. */
  after(ms: number, run: () => void): () => void;
}

/** The machine's own clock. What it has been asked to do keeps no process alive. */
export const systemClock: Clock = {
  now: () => Date.now(),
  after(ms, run) {
    const timer = setTimeout(run, ms);
    timer.unref();
    return () => clearTimeout(timer);
  },
};
