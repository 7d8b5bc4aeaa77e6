/** What was asked for on the command line: which parts, each once and in their own order, and how many throws. */
export interface AskedFor {
  readonly parts: readonly string[];
  readonly throws: number;
}

const ALL_THROWS = 200; // unless said: enough that one in twenty is told from none

/**
 * Reads names of parts and one number, in any order: `detection 20`, `20`, nothing. No name asks for all parts.
 *
 * Errors:  RangeError for what is neither a part nor a whole number of throws from 1 on
 */
export function askedFor(words: readonly string[], known: readonly string[]): AskedFor {
  const named = words.filter((word) => known.includes(word));
  const [count = `${ALL_THROWS}`, ...more] = words.filter((word) => !known.includes(word));
  const throws = Number(count);
  if (!Number.isInteger(throws) || throws < 1) {
    throw new RangeError(
      `soak needs one of ${known.join(", ")}, or a whole number of throws from 1 on, got ${count}`,
    );
  }
  if (more.length > 0) throw new RangeError(`soak needs one number of throws, got ${more[0]} too`);
  return {
    parts: named.length === 0 ? known : known.filter((part) => named.includes(part)),
    throws,
  };
}
