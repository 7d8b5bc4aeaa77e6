/** What reads a walk: its checks and its fixes. */
export type Reader = typeof import("./reader");

let atHand: Reader | null = null;

/** What was fetched before; null where nothing was. */
export function readerAtHand(): Reader | null {
  return atHand;
}

/**
 * The reader, for whoever holds something that it read: then it is at hand.
 *
 * Errors:  throws where nothing was read yet
 */
export function readerInUse(): Reader {
  if (atHand === null) throw new Error("a remark is there only once the walk was read");
  return atHand;
}

/**
 * Fetches what reads a walk, once for this page.
 *
 * Errors:  rejects where the line is down and it was not fetched before; it may be asked for again
 */
export async function fetchReader(): Promise<Reader> {
  atHand ??= await import("./reader");
  return atHand;
}
