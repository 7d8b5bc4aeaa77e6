import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { KeptWork, WorkKey } from "./kept-work";

const DATABASE = "heelstrip";
const VERSION = 1;

/** What is to be written and taken away together, all of it or nothing. */
export interface Batch {
  readonly keep: readonly KeptWork[];
  readonly drop: readonly WorkKey[];
}

/** The store in this browser for work that is not saved yet. */
export interface LocalCopy {
  /** What was kept of a sheet, by this page or another, in the order it was done in. */
  read(sheet: string): Promise<readonly KeptWork[]>;
  /** Resolves when the browser says that the transaction is on its disk, not before. */
  write(batch: Batch): Promise<void>;
  /** Calls back when the browser took the store away, and all that was in it. */
  onGone(listener: () => void): void;
  close(): void;
}

interface Layout extends DBSchema {
  work: { key: [string, number, number, string]; value: KeptWork };
}

/**
 * Opens the store at its first use. Each page writes under keys of its own, and whoever knows work to be
 * saved takes it away: so two pages of one sheet leave each other's work alone.
 *
 * Errors:  every call rejects where the browser keeps nothing (a private window, a full disk)
 */
export function openLocalCopy(): LocalCopy {
  let opening: Promise<IDBPDatabase<Layout>> | null = null;
  let gone = () => {};
  const open = () => {
    opening ??= openDB<Layout>(DATABASE, VERSION, {
      upgrade: (db) => void db.createObjectStore("work", { keyPath: "key" }),
      blocking(_from, _to, event) {
        opening = null; // a newer page wants to change the store: it is opened again when needed
        (event.target as IDBDatabase).close();
      },
      terminated() {
        opening = null;
        gone();
      },
    });
    opening.catch(() => {
      opening = null; // a store that was shut may open later
    });
    return opening;
  };
  return {
    async read(sheet) {
      const db = await open();
      // An array sorts behind every number, so this is every key of the sheet.
      return db.getAll("work", IDBKeyRange.bound([sheet], [sheet, []]));
    },
    async write({ keep, drop }) {
      const db = await open();
      const transaction = db.transaction("work", "readwrite", { durability: "strict" });
      const { store, done } = transaction;
      await Promise.all([
        ...keep.map((work) => store.put(work)),
        ...drop.map((key) => store.delete([...key])),
        done,
      ]);
    },
    onGone(listener) {
      gone = listener;
    },
    close() {
      void opening?.then((db) => db.close()).catch(() => {});
      opening = null;
    },
  };
}
