import { parentPort, workerData } from "node:worker_threads";
import { connectSqlite } from "./sqlite";
import { openSqliteStore } from "./sqlite-store";
import type { Store } from "./store";
import { toStoreError } from "./store-error";
import { widenLog } from "./widen-log";
import type { Call, Reply, StoreThreadData } from "./worker-call";

/** The thread that owns the file: SQLite's calls block, and here they block nobody else. */
async function serve({ file, migrated }: StoreThreadData): Promise<void> {
  const connection = connectSqlite(file);
  const store = await openSqliteStore(connection, { migrated });
  if (!migrated) widenLog(file, connection);
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
