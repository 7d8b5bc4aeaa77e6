/** Says when a live message may go: at most 60 a second, also on a screen that is quicker. */
const LEAST_GAP_MS = 1000 / 60 - 1; // a frame that comes a little early still counts

export function mayTell(lastMs: number, nowMs: number): boolean {
  return nowMs - lastMs >= LEAST_GAP_MS;
}
