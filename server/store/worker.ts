import { parentPort, workerData } from "node:worker_threads";
import { kyselyStore, openKyselyStore } from "./kysely-store";
import { SQLITE } from "./schema";
import { openSqlite } from "./sqlite";
import type { Store } from "./store";
import { toStoreError } from "./store-error";
import type { Call, Reply, StoreThreadData } from "./worker-call";

/** The thread that owns the file: SQLite's calls block, and here they block nobody else. */
async function serve({ file, migrated }: StoreThreadData): Promise<void> {
  const db = openSqlite(file);
  const store = migrated ? kyselyStore(db, SQLITE) : await openKyselyStore(db, SQLITE);
  parentPort?.on("message", (call: Call) => {
    void answer(store, call).then((reply) => parentPort?.postMessage(reply));
  });
}

async function answer(store: Store, { id, method, args }: Call): Promise<Reply> {
  if (method === "open") return { id, result: null };
  try {
    const run = store[method] as (...given: readonly unknown[]) => Promise<unknown>;
    return { id, result: await run(...args) };
  } catch (error) {
    const { code, message } = toStoreError(error);
    return { id, error: { code, message } };
  }
}

await serve(workerData as StoreThreadData);
