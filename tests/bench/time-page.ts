import type { Page } from "@playwright/test";

/** What the page's own script took, in milliseconds, since the clock was last reset. */
export interface PageTimes {
  /** All listeners of one pointermove together, each event once. */
  readonly events: readonly number[];
  /** All animation-frame callbacks of one frame together: the painting of live ink is in them. */
  readonly frames: readonly number[];
  /** From one frame to the next. */
  readonly gaps: readonly number[];
}

declare global {
  interface Window {
    benchTimes: { events: number[]; frames: number[]; gaps: number[] };
  }
}

/** Wraps the page's listeners and frames before any of its script runs. The page itself is as built. */
export async function timePage(page: Page): Promise<void> {
  // tsx writes functions with a helper that names them; in the page there is none.
  await page.addInitScript("globalThis.__name ??= (named) => named;");
  await page.addInitScript(() => {
    window.benchTimes = { events: [], frames: [], gaps: [] };
    wrapListeners();
    wrapFrames();

    function wrapListeners() {
      const add = EventTarget.prototype.addEventListener;
      const remove = EventTarget.prototype.removeEventListener;
      const wrapped = new WeakMap<object, EventListener>();
      let current: Event | null = null;
      EventTarget.prototype.addEventListener = function (name, listener, options) {
        if (name !== "pointermove" || listener === null) {
          return add.call(this, name, listener, options);
        }
        const timed =
          wrapped.get(listener) ??
          function (this: unknown, event: Event) {
            const since = performance.now();
            if (typeof listener === "function") listener.call(this as EventTarget, event);
            else listener.handleEvent(event);
            const took = performance.now() - since;
            const { events } = window.benchTimes;
            if (event === current) events.push((events.pop() ?? 0) + took);
            else events.push(took);
            current = event;
          };
        wrapped.set(listener, timed);
        return add.call(this, name, timed, options);
      };
      EventTarget.prototype.removeEventListener = function (name, listener, options) {
        const timed = listener === null ? undefined : wrapped.get(listener);
        return remove.call(this, name, timed ?? listener, options);
      };
    }

    function wrapFrames() {
      const ask = window.requestAnimationFrame.bind(window);
      let took = 0;
      let last = 0;
      window.requestAnimationFrame = (callback) =>
        ask((now) => {
          const since = performance.now();
          callback(now);
          took += performance.now() - since;
        });
      const beat = (now: number) => {
        const { gaps, frames } = window.benchTimes;
        if (last > 0) gaps.push(now - last);
        frames.push(took);
        took = 0;
        last = now;
        ask(beat);
      };
      ask(beat);
    }
  });
}

export async function resetTimes(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.benchTimes = { events: [], frames: [], gaps: [] };
  });
}

export function readTimes(page: Page): Promise<PageTimes> {
  return page.evaluate(() => window.benchTimes);
}
