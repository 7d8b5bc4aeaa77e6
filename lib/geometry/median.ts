/**
 * The middle value; of an even number of values the mean of the two in the middle.
 *
 * Errors:  RangeError when there are none
 *
 * @example
 * median([3, 1, 2, 10]); // => 2.5
 */
export function median(values: readonly number[]): number {
  const sorted = new Float64Array(values).sort(); // of numbers alone: no call to compare two
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  if (upper === undefined || lower === undefined) {
    throw new RangeError("median needs at least one value, got none");
  }
  return (lower + upper) / 2;
}
