/**
 * What arithmetic alone can add to a reading that is exact: less than this beyond a threshold is
 * not beyond it. Leg lengths, shares and frames alike; a millionth of a leg is under a micrometre.
 */
const NOISE = 1e-6;

/** Whether a reading lies beyond its limit by more than its own ±. False for what is no number. */
export function clearlyBeyond(value: number, plusMinus: number, limit: number): boolean {
  return value - plusMinus > limit + NOISE;
}

/** The first of those whose number is the greatest; what differs by arithmetic alone is as great. */
export function greatestOf<One>(ones: readonly One[], of: (one: One) => number): One | undefined {
  let [greatest, most] = [ones[0], Number.NaN];
  for (const one of ones) {
    const value = Math.round(of(one) / NOISE);
    if (one !== ones[0] && !(value > most)) continue;
    [greatest, most] = [one, value];
  }
  return greatest;
}

/** Sorts by a number, the greatest first; what differs by arithmetic alone keeps its order. */
export function greatestFirst(a: number, b: number): number {
  return Math.round(b / NOISE) - Math.round(a / NOISE);
}
