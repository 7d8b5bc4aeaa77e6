import { type Kysely, sql } from "kysely";
import { readPieces } from "./documents";
import { MIGRATION_STEPS } from "./migrations";
import type { Schema } from "./schema";

/** What a database holds, once it was found sound. */
export interface Sound {
  readonly sheets: number;
  readonly documents: number;
  /** Snapshots that are not what was written; the document is whole without them. */
  readonly damagedSnapshots: number;
}

/**
 * Reads every document from beginning to end.
 *
 * Errors:  Error in words for whoever runs the board, if one is not whole
 */
export async function requireWholeDocuments(db: Kysely<Schema>): Promise<Sound> {
  const documents = await db.selectFrom("documents").select("id").execute();
  let damagedSnapshots = 0;
  for (const { id } of documents) {
    damagedSnapshots += (await readPieces(db, Number(id))).damagedSnapshots;
  }
  const { sheets } = await db
    .selectFrom("sheets")
    .select((eb) => eb.fn.countAll().as("sheets"))
    .executeTakeFirstOrThrow();
  return { sheets: Number(sheets), documents: documents.length, damagedSnapshots };
}

/**
 * Looks at the pages and keys of a database of any version that this one can bring to its own.
 *
 * Errors:  Error in words for whoever runs the board, if something is wrong
 */
export async function requireSoundPages(db: Kysely<Schema>): Promise<void> {
  const { rows: faults } = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(
    db,
  );
  if (faults.some((fault) => fault.integrity_check !== "ok")) {
    throw new Error(`the database is damaged: ${faults[0]?.integrity_check}`);
  }
  const steps = await stepsTaken(db);
  if (steps.length === 0) throw new Error("it is no database of this program");
  const unknown = steps.filter((step) => !MIGRATION_STEPS.includes(step));
  if (unknown.length > 0) throw new Error("it was made by a newer version of this program");
  const { rows: loose } = await sql`pragma foreign_key_check`.execute(db);
  if (loose.length > 0)
    throw new Error("the database is damaged: rows without what they belong to");
}

async function stepsTaken(db: Kysely<Schema>): Promise<string[]> {
  const { rows: tables } = await sql`select 1 from sqlite_master
    where name = 'kysely_migration'`.execute(db);
  if (tables.length === 0) return [];
  const { rows } = await sql<{ name: string }>`select name from kysely_migration`.execute(db);
  return rows.map(({ name }) => name);
}

/** Are its tables of this version's form? */
export async function isNewest(db: Kysely<Schema>): Promise<boolean> {
  const steps = await stepsTaken(db);
  return MIGRATION_STEPS.every((step) => steps.includes(step));
}

/**
 * All of a database in its one file, as long as nobody opens it again. Closing alone does not promise
 * that: the driver lets go of a file when it comes to it.
 */
export async function intoOneFile(db: Kysely<Schema>): Promise<void> {
  const { rows } = await sql<{ journal_mode: string }>`pragma journal_mode = delete`.execute(db);
  if (rows[0]?.journal_mode !== "delete") throw new Error("the database is in use");
}
