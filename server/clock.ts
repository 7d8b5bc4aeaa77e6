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

/** Runs again and again, so many ms apart, until what it returns is called. */
export function everyWhile(clock: Clock, ms: number, run: () => void): () => void {
  let callOff = clock.after(ms, again);
  function again(): void {
    callOff = clock.after(ms, again);
    run();
  }
  return () => callOff();
}
