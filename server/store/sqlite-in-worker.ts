import { Worker } from "node:worker_threads";
import type { Store } from "./store";
import { StoreError, toStoreError } from "./store-error";
import type { Call, Reply } from "./worker-call";

/** Written as an object, so that the compiler misses a method that is left out. */
const METHODS: { readonly [Method in Exclude<keyof Store, "close">]: true } = {
  ...{ createSheet: true, loadDocument: true, appendUpdates: true, raiseGeneration: true },
  ...{ quarantine: true, listQuarantine: true },
  ...{ addLink: true, listLinks: true, changeLink: true, revokeLink: true },
  ...{ enter: true, grantOf: true, listAudit: true, controlAfter: true },
  ...{ putBlob: true, loadBlob: true, probe: true },
};

interface Waiting {
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: Error) => void;
}

/**
 * The store over an SQLite file, in a thread of its own. Should the thread die, what waited for it
 * fails, and the next call starts another.
 *
 * Errors:  StoreError from every method, and from here if the file cannot be opened
 */
export async function openSqliteInWorker(file: string): Promise<Store> {
  let thread = startThread(file);
  await thread.opened;
  const call = (method: keyof Store, args: readonly unknown[]) => {
    if (thread.ended()) thread = startThread(file);
    return thread.ask(method, args);
  };
  const methods = Object.keys(METHODS).map((method) => [
    method,
    (...args: readonly unknown[]) => call(method as keyof Store, args),
  ]);
  return { ...Object.fromEntries(methods), close: () => thread.close() } as Store;
}

interface StoreThread {
  readonly opened: Promise<void>;
  ask(method: Call["method"], args: readonly unknown[]): Promise<unknown>;
  ended(): boolean;
  close(): Promise<void>;
}

function startThread(file: string): StoreThread {
  const worker = new Worker(workerUrl(), { workerData: { file } });
  const waiting = new Map<number, Waiting>();
  let calls = 0;
  let over = false;
  const end = (error: Error) => {
    over = true;
    for (const { reject } of waiting.values()) reject(error);
    waiting.clear();
  };
  worker.on("error", (error) => end(toStoreError(error)));
  worker.on("exit", () => end(new StoreError("broken", "the database thread has ended")));
  worker.on("message", (reply: Reply) => settle(waiting, reply));
  const ask = (method: Call["method"], args: readonly unknown[]) =>
    new Promise<unknown>((resolve, reject) => {
      if (over) return reject(new StoreError("broken", "the database thread has ended"));
      const call: Call = { id: ++calls, method, args };
      waiting.set(call.id, { resolve, reject });
      worker.postMessage(call);
    });
  const opened = ask("open", []).then(() => {});
  opened.catch(() => {}); // whoever started the thread hears of it through its own call
  return {
    opened,
    ask,
    ended: () => over,
    async close() {
      if (!over) await ask("close", []);
      await worker.terminate();
    },
  };
}

function settle(waiting: Map<number, Waiting>, reply: Reply): void {
  const asked = waiting.get(reply.id);
  waiting.delete(reply.id);
  if ("error" in reply) asked?.reject(new StoreError(reply.error.code, reply.error.message));
  else asked?.resolve(reply.result);
}

/** From source the thread needs a loader for TypeScript; the built server has its thread bundled. */
function workerUrl(): URL {
  const fromSource = import.meta.url.endsWith(".ts");
  return new URL(fromSource ? "./worker-boot.mjs" : "./store-worker.mjs", import.meta.url);
}
