import { HUES } from "./me";

/** Somebody on the sheet, and the hue of their pencil in degrees on the colour wheel. */
interface Pencil {
  readonly client: number;
  readonly hue: number;
}

/**
 * The hue for somebody who has not chosen one: theirs, unless another holds it; then the first that
 * is free, so that two pencils are not alike. Whoever arrives gives way to all who are there; two who
 * arrive at once, by client id. When all hues are taken, theirs.
 */
export function freeHue(mine: Pencil, others: readonly Pencil[], arriving: boolean): number {
  const must = others.some(
    ({ client, hue }) => hue === mine.hue && (arriving || client < mine.client),
  );
  if (!must) return mine.hue;
  return HUES.find((hue) => others.every((other) => other.hue !== hue)) ?? mine.hue;
}
