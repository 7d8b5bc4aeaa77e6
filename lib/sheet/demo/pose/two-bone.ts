import { gap, type Place, plus, sizeOf, squareTo } from "./space";

const REACH = 0.998; // of both bones: a limb is never drawn dead straight

/**
 * The joint between two bones that reach from one place to another, bent toward `pole`.
 *
 * Shapes:  `to` is answered again, nearer where the bones would not reach
 * Units:   leg lengths
 * Source:  the law of cosines
 */
export function bend(
  from: Place,
  to: Place,
  {
    first,
    second,
    pole,
  }: { readonly first: number; readonly second: number; readonly pole: Place },
): { readonly joint: Place; readonly end: Place } {
  const way = gap(from, to);
  const far = sizeOf(way);
  const reach = Math.min(far, (first + second) * REACH);
  const along = (first ** 2 - second ** 2 + reach ** 2) / (2 * reach);
  const aside = Math.sqrt(Math.max(0, first ** 2 - along ** 2));
  const joint = plus(plus(from, way, along / far), squareTo(pole, way), aside);
  return { joint, end: plus(from, way, reach / far) };
}
