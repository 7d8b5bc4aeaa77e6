/** Painting that may wait, done in small pieces so that no frame comes late. */
export interface PaintQueue {
  /** Queues a job; one under the same key gives way to it. Each turn of it is one small piece. */
  add(key: object, job: Iterator<void>): void;
  drop(key: object): void;
}

export interface PaintQueueDeps {
  readonly nextFrame: (run: () => void) => void;
  /** Milliseconds. */
  readonly now: () => number;
}

/** Script may take this much of a frame; the browser still has to put the pixels down. */
const BUDGET_MS = 5;
/** Pieces a frame at most: their pixels are put down after the script's time was taken. */
const MOST_PIECES = 8;

export function createPaintQueue({ nextFrame, now }: PaintQueueDeps): PaintQueue {
  const jobs = new Map<object, Iterator<void>>();
  let asked = false;

  const ask = () => {
    if (asked || jobs.size === 0) return;
    asked = true;
    nextFrame(work);
  };
  const work = () => {
    asked = false;
    const until = now() + BUDGET_MS;
    for (let piece = 0; piece < MOST_PIECES && now() < until; piece++) {
      const [next] = jobs;
      if (next === undefined) break;
      const [key, job] = next;
      if (job.next().done === true && jobs.get(key) === job) jobs.delete(key);
    }
    ask();
  };

  return {
    add(key, job) {
      jobs.set(key, job);
      ask();
    },
    drop(key) {
      jobs.delete(key);
    },
  };
}

/** The page's own queue: one, so that all papers share the same frame. */
export const paintQueue = createPaintQueue({
  nextFrame: (run) => requestAnimationFrame(run),
  now: () => performance.now(),
});
