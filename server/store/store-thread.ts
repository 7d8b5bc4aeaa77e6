import { Worker } from "node:worker_threads";
import { StoreError, toStoreError } from "./store-error";
import type { Call, Reply, StoreThreadData } from "./worker-call";

interface Waiting {
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: Error) => void;
}

/** A store in a thread, and the line of calls to it. Errors: StoreError from every call. */
export interface StoreThread {
  readonly opened: Promise<void>;
  ask(method: Call["method"], args: readonly unknown[]): Promise<unknown>;
  ended(): boolean;
  close(): Promise<void>;
}

/** What a batch leaves behind is dropped at once; by itself V8 would let forty megabytes of it gather. Measured. */
const YOUNG_MIB = 6;

export function startThread(data: StoreThreadData): StoreThread {
  const resourceLimits = { maxYoungGenerationSizeMb: YOUNG_MIB };
  const worker = new Worker(workerUrl(), { workerData: data, resourceLimits });
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
