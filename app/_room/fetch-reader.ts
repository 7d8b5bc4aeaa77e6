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

/** So long a line that is not down may keep one waiting. Our own choice: at 3 kB a second all of it is there. */
const PATIENCE_MS = 20_000;

/**
 * Fetches what reads a walk, once for this page.
 *
 * Errors:  rejects where the line is down, or nothing comes for 20 s, and it was not fetched before; it may be
 *          asked for again, and what came meanwhile is at hand then
 */
export async function fetchReader(): Promise<Reader> {
  if (atHand !== null) return atHand;
  const coming = import("./reader").then((reader) => {
    atHand = reader;
    return reader;
  });
  return inTime(coming);
}

function inTime<T>(coming: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const late = () => reject(new Error(`nothing came for ${PATIENCE_MS} ms`));
    const timer = setTimeout(late, PATIENCE_MS);
    coming.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
