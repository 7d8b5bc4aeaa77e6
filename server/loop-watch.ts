import { monitorEventLoopDelay } from "node:perf_hooks";
import { type Clock, everyWhile } from "./clock";

const WINDOW_MS = 10_000;
const RESOLUTION_MS = 20;

/** How far the process lags behind its own timers. */
export interface LoopWatch {
  /** The worst of the last ten to twenty seconds. ms. */
  lagMs(): number;
  stop(): void;
}

export function watchLoop(clock: Clock): LoopWatch {
  const loop = monitorEventLoopDelay({ resolution: RESOLUTION_MS });
  loop.enable();
  let before = 0;
  const worst = () => Math.max(0, loop.max / 1e6 - RESOLUTION_MS);
  const callOff = everyWhile(clock, WINDOW_MS, () => {
    before = worst();
    loop.reset();
  });
  return {
    lagMs: () => Math.max(before, worst()),
    stop() {
      callOff();
      loop.disable();
    },
  };
}
