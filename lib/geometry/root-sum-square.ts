/**
 * The ± of a sum or difference whose parts err independently of each other.
 *
 * Shapes:  any number of ±, one ± out; of none, 0
 * Units:   those of the parts, which must share one
 * Source:  JCGM 100:2008 (GUM) 5.1.2, with every sensitivity ±1
 *
 * @example
 * rootSumSquare(3, 4); // => 5
 */
export function rootSumSquare(...parts: readonly number[]): number {
  // Plain squares: these are far from where `hypot` would save them, and it is many times slower.
  let sum = 0;
  for (const part of parts) sum += part * part;
  return Math.sqrt(sum);
}
