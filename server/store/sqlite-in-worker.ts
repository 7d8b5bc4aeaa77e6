import type { Store } from "./store";
import { type StoreThread, startThread } from "./store-thread";

/** Written as an object, so that the compiler misses a method that is left out. */
const METHODS: { readonly [Method in Exclude<keyof Store, "close" | "compact">]: true } = {
  ...{ createSheet: true, loadDocument: true, appendUpdates: true, raiseGeneration: true },
  ...{ quarantine: true, listQuarantine: true },
  ...{ addLink: true, listLinks: true, changeLink: true, revokeLink: true },
  ...{ enter: true, grantOf: true, listAudit: true, controlAfter: true },
  ...{ putBlob: true, loadBlob: true, probe: true },
};

const IDLE_MS = 60_000; // how long the second thread waits for more; our own choice, no source

/**
 * The store over an SQLite file, in a thread of its own. Should the thread die, what waited for it
 * fails, and the next call starts another. Compacting has a second thread and connection while there
 * is some to be done: it may take a second, in which people draw on.
 *
 * Errors:  StoreError from every method, and from here if the file cannot be opened
 */
export async function openSqliteInWorker(file: string): Promise<Store> {
  let thread = startThread({ file, migrated: false });
  await thread.opened;
  const aside = threadAside(file);
  const call = (method: keyof Store, args: readonly unknown[]) => {
    if (thread.ended()) thread = startThread({ file, migrated: false });
    return thread.ask(method, args);
  };
  const methods = Object.keys(METHODS).map((method) => [
    method,
    (...args: readonly unknown[]) => call(method as keyof Store, args),
  ]);
  const compact: Store["compact"] = (order) =>
    aside.ask("compact", [order]) as ReturnType<Store["compact"]>;
  return {
    ...(Object.fromEntries(methods) as Omit<Store, "close" | "compact">),
    compact,
    async close() {
      await aside.close();
      await thread.close();
    },
  };
}

/** A thread that is there while it is needed. */
function threadAside(file: string) {
  let thread: StoreThread | null = null;
  let asked = 0;
  let timer: NodeJS.Timeout | undefined;
  const close = async () => {
    clearTimeout(timer);
    const ending = thread;
    thread = null;
    await ending?.close();
  };
  return {
    close,
    async ask(...[method, args]: Parameters<StoreThread["ask"]>): Promise<unknown> {
      clearTimeout(timer);
      if (thread === null || thread.ended()) thread = startThread({ file, migrated: true });
      asked++;
      try {
        return await thread.ask(method, args);
      } finally {
        if (--asked === 0) timer = setTimeout(() => void close(), IDLE_MS).unref();
      }
    },
  };
}
