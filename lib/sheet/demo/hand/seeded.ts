/** Numbers 0..1 that look like chance and come out the same for a seed: a hand's small unevenness. */
export type Unevenness = () => number;

/**
 * Lehmer's generator.
 * Source:  Park & Miller (1988), Comm. ACM 31:1192, with the multiplier 48271 they gave in 1993
 */
export function seeded(seed: number): Unevenness {
  let state = (Math.abs(Math.trunc(seed)) % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
