import { openDrawer } from "../../app/_room/local/drawer";
import { byKey, type KeptWork, keyText } from "../../app/_room/local/kept-work";
import type { Batch, LocalCopy } from "../../app/_room/local/local-copy";

/** A store whose disk a test holds in its hand: it takes a batch when it is told to. */
export interface PaperStore extends LocalCopy {
  /** What is on the disk, by key. */
  readonly disk: Map<string, KeptWork>;
  /** Batches that wait for the disk. */
  readonly asked: Batch[];
  /** The disk takes the batch that waits, or will not. */
  settle(how: "done" | "full"): Promise<void>;
  /** From here on it takes everything at once, or nothing. */
  always(how: "done" | "full" | "asked"): void;
  /** The browser takes all of it away. */
  vanish(): void;
}

export function paperStore(): PaperStore {
  const disk = new Map<string, KeptWork>();
  const asked: Batch[] = [];
  let mode: "done" | "full" | "asked" = "done";
  let answer: ((how: "done" | "full") => void) | null = null;
  let gone = () => {};
  return {
    disk,
    asked,
    async read(sheet) {
      if (mode === "full") throw new Error("a private window");
      return [...disk.values()].filter(({ key }) => key[0] === sheet).toSorted(byKey);
    },
    async write(batch) {
      asked.push(batch);
      const how = mode === "asked" ? await new Promise<"done" | "full">((r) => (answer = r)) : mode;
      if (how === "full") throw new Error("the disk is full");
      for (const work of batch.keep) disk.set(keyText(work.key), work);
      for (const key of batch.drop) disk.delete(keyText(key));
    },
    onGone(listener) {
      gone = listener;
    },
    close() {},
    async settle(how) {
      answer?.(how);
      await new Promise(setImmediate); // what waited for the disk goes on
    },
    always(how) {
      mode = how;
    },
    vanish() {
      disk.clear();
      gone();
    },
  };
}

/** A drawer over such a store, and the clock that its tries wait for. */
export function paperDrawer(store: PaperStore, sheet = "sheet", page = "page-a") {
  const alarms: (() => void)[] = [];
  const drawer = openDrawer({
    ...{ sheet, page, copy: store, now: () => 1000 },
    after: (_ms, run) => void alarms.push(run),
  });
  const wait = async () => {
    for (const ring of alarms.splice(0)) ring();
    await new Promise(setImmediate);
  };
  return { drawer, wait };
}
