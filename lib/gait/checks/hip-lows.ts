import { rootSumSquare } from "../../geometry";
import { clearlyBeyond } from "../beyond";
import { COUNTS_FROM } from "../methods/hitch";
import type { PosedHips } from "../step-heights";

/** A pose and the height of its hips. */
export type Posed = PosedHips;

/**
 * The lows of a step that are surely there, in order: where a fall that counts ends in a rise that counts.
 *
 * Shapes:  the step's poses in order, the contact that ends it among them
 */
export function lowsIn(posed: readonly Posed[]): readonly Posed[] {
  return lowsBy(posed, surely);
}

/** How many lows there may be, as far as the marks' ± leaves it open. */
export function mostLows(posed: readonly Posed[]): number {
  return lowsBy(posed, perhaps).length;
}

/** Whether the second pose stands higher than the first by as much as counts. */
type Counts = (from: Posed, to: Posed) => boolean;

function lowsBy(posed: readonly Posed[], counts: Counts): readonly Posed[] {
  const lows: Posed[] = [];
  let [low, high] = [posed[0], posed[0]];
  let falls = true; // as it comes out of the step before
  for (const one of posed) {
    if (low === undefined || high === undefined) break;
    if (rises(high, one)) high = one;
    if (rises(one, low)) low = one;
    if (falls && counts(low, one)) {
      lows.push(low);
      [falls, high] = [false, one];
    } else if (!falls && counts(one, high)) {
      [falls, low] = [true, one];
    }
  }
  return lows;
}

/** Whether the second stands higher than the first, by however little. */
export function rises(from: Posed, to: Posed): boolean {
  return to.value > from.value;
}

function surely(from: Posed, to: Posed): boolean {
  return clearlyBeyond(to.value - from.value, apartWithin(from, to), COUNTS_FROM);
}

function perhaps(from: Posed, to: Posed): boolean {
  return clearlyBeyond(to.value - from.value, -apartWithin(from, to), COUNTS_FROM);
}

function apartWithin(from: Posed, to: Posed): number {
  return rootSumSquare(from.plusMinus, to.plusMinus);
}
