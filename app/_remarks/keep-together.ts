const NO_BREAK = "\u00a0";

/** Keeps a number with its ±, its unit and its arrow, so that no line ends between them. */
export function keepTogether(text: string): string {
  return text
    .replace(/(\d) (?=±|%|→|frames?\b|leg\b)/g, `$1${NO_BREAK}`)
    .replace(/([±→]) (?=\d)/g, `$1${NO_BREAK}`);
}
