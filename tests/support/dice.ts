/** Chance that can be thrown again: the same seed gives the same throws. */
export interface Dice {
  /** A whole number 0..below−1. */
  below(below: number): number;
  /** One of these. */
  of<T>(things: readonly T[]): T;
  /** So many random bytes: what ids are made of. */
  readonly bytes: (count: number) => Uint8Array;
}

/** Dice from a seed. Source: Marsaglia (2003), Xorshift RNGs, triple 13 17 5. */
export function dice(seed: number): Dice {
  let state = (seed ^ 0x9e3779b9) >>> 0;
  const next = (): number => {
    state = state === 0 ? 1 : state;
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state;
  };
  for (let i = 0; i < 8; i++) next();
  const below = (limit: number): number => Math.floor((next() / 2 ** 32) * limit);
  return {
    below,
    of: (things) => {
      const thing = things[below(things.length)];
      if (thing === undefined) throw new RangeError("dice need something to choose from");
      return thing;
    },
    bytes: (count) => Uint8Array.from({ length: count }, () => below(256)),
  };
}
