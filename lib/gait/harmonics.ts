import { requireFinite } from "../require";

/** Harmonics of a stride as sums of amplitudes: those that both steps share, and those that tell them apart. */
export interface Harmonics {
  /** Of the 2nd, 4th, …: what both steps do alike. */
  readonly even: number;
  /** Of the 1st, 3rd, …: in what they differ. */
  readonly odd: number;
}

/** As many harmonics as Menz and others sum. */
const MOST = 20;

/**
 * Even and odd harmonics of one stride's curve. Their quotient is the harmonic ratio, which has no value
 * where both steps are alike; the share even / (even + odd) always has one.
 *
 * Shapes:  samples evenly spaced over one stride, the end not repeated; three at least
 * Units:   amplitudes in the samples' unit
 * Errors:  RangeError for fewer samples, or one that is not finite
 * Source:  Menz, Lord & Fitzpatrick (2003), Gait Posture 18:35: the first 20 harmonics of the stride
 *
 * @example
 * const turn = (n) => (2 * Math.PI * n) / 60;
 * const samples = Array.from({ length: 60 }, (_, n) => 4 * Math.sin(2 * turn(n)) + Math.sin(turn(n)));
 * const { even, odd } = harmonics(samples);
 * [Number((even / odd).toFixed(6)), Number((even / (even + odd)).toFixed(6))]; // => [4, 0.8]
 */
export function harmonics(samples: readonly number[], most: number = MOST): Harmonics {
  if (samples.length < 3) {
    throw new RangeError(`harmonics needs three samples at least, got ${samples.length}`);
  }
  for (const sample of samples) requireFinite("harmonics", { sample });
  const highest = Math.min(most, Math.floor((samples.length - 1) / 2));
  const amplitudes = Array.from({ length: highest }, (_, n) => amplitude(samples, n + 1));
  const sum = (parity: 0 | 1) =>
    amplitudes.filter((_, n) => (n + 1) % 2 === parity).reduce((total, one) => total + one, 0);
  return { even: sum(0), odd: sum(1) };
}

function amplitude(samples: readonly number[], harmonic: number): number {
  const turn = (2 * Math.PI * harmonic) / samples.length;
  const along = samples.reduce((sum, value, n) => sum + value * Math.cos(turn * n), 0);
  const across = samples.reduce((sum, value, n) => sum + value * Math.sin(turn * n), 0);
  return (2 * Math.hypot(along, across)) / samples.length;
}
