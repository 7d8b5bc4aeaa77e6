import { extname } from "node:path";

/**
 * Where a page of a print is written: the file asked for, or numbered where there are several pages.
 *
 * @example
 * pagePath("walk.png", 2, 3); // => "walk-2.png"
 */
export function pagePath(output: string, number: number, count: number): string {
  if (count === 1) return output;
  const kind = extname(output);
  return `${output.slice(0, output.length - kind.length)}-${number}${kind}`;
}
