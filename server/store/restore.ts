import { existsSync, mkdirSync, renameSync } from "node:fs";
import { basename, join } from "node:path";
import type { Kysely } from "kysely";
import type { SheetId } from "../../shared/sheet-id";
import { note } from "./audit";
import { carryAccess } from "./carry-access";
import { DATABASE_FILE } from "./database-file";
import { lockFolder } from "./lock-file";
import { migrate } from "./migrations";
import { copyDatabase, keepAside, removeDatabase, syncToDisk, timeInName } from "./on-disk";
import { type Schema, SQLITE } from "./schema";
import {
  intoOneFile,
  requireSoundPages,
  requireWholeDocuments,
  type Sound,
} from "./sound-database";
import { openSqlite } from "./sqlite";

export interface RestoreOrder {
  readonly dataDir: string;
  readonly from: string;
  readonly at: number;
  /** For the test that strikes it down. */
  readonly reached?: (point: "copied" | "ready" | "aside") => void;
}

export interface Restored {
  readonly found: Sound;
  /** Where what was there before is kept; null if there was nothing. */
  readonly aside: string | null;
  /** How many sheets of what was there are not in the backup. */
  readonly missing: number;
  /** Why what was there could not be read; then nothing is known of links revoked since the backup. */
  readonly unread: string | null;
}

/**
 * Puts a backup in the place of the database, under a generation that no page has ever seen: pages that
 * stayed open cannot merge their old state into it. The folder is locked meanwhile. Struck down at any
 * moment, it leaves the old database or the new one.
 *
 * Errors:  Error in words for whoever runs the board; then everything is as it was
 */
export async function restore(order: RestoreOrder): Promise<Restored> {
  const { dataDir, from } = order;
  if (!existsSync(from)) throw new Error(`there is no file ${from}`);
  mkdirSync(dataDir, { recursive: true });
  const lock = lockFolder(dataDir);
  try {
    return await restoreLocked(order);
  } finally {
    lock.release();
  }
}

async function restoreLocked({ dataDir, from, at, reached }: RestoreOrder): Promise<Restored> {
  const file = join(dataDir, DATABASE_FILE);
  const incoming = join(dataDir, "heelstrip.restoring.db");
  try {
    if (from === incoming) throw new Error(`${from} needs another name first`);
    copyDatabase(from, incoming);
    reached?.("copied");
    const { found, before } = await prepare({ incoming, file, from, at });
    syncToDisk(incoming);
    reached?.("ready");
    const aside = existsSync(file) ? join(dataDir, `heelstrip.before-${timeInName(at)}.db`) : null;
    if (aside !== null) keepAside(file, aside);
    reached?.("aside");
    renameSync(incoming, file);
    syncToDisk(file);
    return { found, aside, ...before };
  } finally {
    removeDatabase(incoming);
  }
}

interface Preparing {
  readonly incoming: string;
  readonly file: string;
  readonly from: string;
  readonly at: number;
}

async function prepare({ incoming, file, from, at }: Preparing) {
  const db = openSqlite(incoming);
  try {
    await requireSoundPages(db).catch((error: unknown) => {
      throw new Error(`${from} cannot be restored: ${inWords(error)}`);
    });
    await migrate(db, SQLITE);
    const before = await takeOver(db, file);
    await raiseAll(db, { at, above: before.generation, from });
    const found = await requireWholeDocuments(db);
    await intoOneFile(db);
    return { found, before: { missing: before.missing, unread: before.unread } };
  } finally {
    await db.destroy();
  }
}

interface Before {
  readonly generation: number;
  readonly missing: number;
  readonly unread: string | null;
}

/** What the new database has to have of the one that is there. That one is closed cleanly by it, too. */
async function takeOver(db: Kysely<Schema>, file: string): Promise<Before> {
  if (!existsSync(file)) return { generation: 0, missing: 0, unread: null };
  const old = openOld(file);
  if (typeof old === "string") return { generation: 0, missing: 0, unread: old };
  try {
    const before = await readBefore(db, old).catch((error: unknown) => ({
      ...{ generation: 0, missing: 0, unread: inWords(error) },
    }));
    if (before.unread === null) await intoOneFile(old);
    return before;
  } finally {
    await old.destroy();
  }
}

async function readBefore(db: Kysely<Schema>, old: Kysely<Schema>): Promise<Before> {
  await requireSoundPages(old);
  await migrate(old, SQLITE);
  await db.transaction().execute((tx) => carryAccess(old, tx));
  const here = new Set((await db.selectFrom("sheets").select("id").execute()).map(({ id }) => id));
  const there = await old.selectFrom("sheets").select("id").execute();
  const missing = there.filter(({ id }) => !here.has(id)).length;
  return { generation: await newestGeneration(old), missing, unread: null };
}

function openOld(file: string): Kysely<Schema> | string {
  try {
    return openSqlite(file);
  } catch (error) {
    return inWords(error);
  }
}

async function newestGeneration(db: Kysely<Schema>): Promise<number> {
  const { newest } = await db
    .selectFrom("documents")
    .select((eb) => eb.fn.max("generation").as("newest"))
    .executeTakeFirstOrThrow();
  return Number(newest ?? 0);
}

interface Raising {
  readonly at: number;
  readonly above: number;
  readonly from: string;
}

/** A time is above every generation, also above those nobody here knows of any more. */
async function raiseAll(db: Kysely<Schema>, { at, above, from }: Raising): Promise<void> {
  const generation = Math.max(at, above + 1, (await newestGeneration(db)) + 1);
  await db.transaction().execute(async (tx) => {
    await tx
      .updateTable("documents")
      .set({ generation, last_batch: "", lease_by: "", lease_until: 0 })
      .execute();
    for (const { id } of await tx.selectFrom("sheets").select("id").execute()) {
      const sheet = id as SheetId;
      const detail = `from ${basename(from)}`;
      await note(tx, { sheet, at, by: null, what: "restored", subject: sheet, detail });
    }
  });
}

function inWords(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
