import type { CannotTell, Review } from "../lib/gait";

/** What could not be told, each once: two steps of one side often need the same. */
export function cannotTellOnce({ cannotTell }: Review): readonly CannotTell[] {
  const seen = new Set<string>();
  return cannotTell.filter(({ check, side, needs }) => {
    const key = JSON.stringify([check, side, needs]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
