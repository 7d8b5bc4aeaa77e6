import { existsSync, mkdirSync, renameSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { sql } from "kysely";
import { DATABASE_FILE } from "./database-file";
import { removeDatabase, syncToDisk, timeInName } from "./on-disk";
import {
  intoOneFile,
  isNewest,
  requireSoundPages,
  requireWholeDocuments,
  type Sound,
} from "./sound-database";
import { openSqlite } from "./sqlite";

export interface BackUpOrder {
  readonly dataDir: string;
  /** A new file, or a folder for one; null for `backups` in the data folder. */
  readonly to: string | null;
  readonly at: number;
}

export interface BackedUp {
  readonly file: string;
  readonly bytes: number;
  /** What was found in it; null if its tables are of an older version, whose pages alone were looked at. */
  readonly found: Sound | null;
}

/**
 * A copy of the database as it is at one moment, while people draw: what was called saved before is in
 * it. It is written through to the disk and looked at in whole before it gets its name.
 *
 * Errors:  Error in words for whoever runs the board; then there is no file of that name
 */
export async function backUp({ dataDir, to, at }: BackUpOrder): Promise<BackedUp> {
  const from = join(dataDir, DATABASE_FILE);
  if (!existsSync(from)) throw new Error(`there is no database in ${dataDir}`);
  const file = fileFor(to ?? join(dataDir, "backups"), to === null, at);
  if (existsSync(file)) throw new Error(`${file} is there already, and stays as it is`);
  mkdirSync(dirname(file), { recursive: true });
  const part = `${file}.${process.pid}.part`;
  try {
    await copyInto(from, part);
    const found = await lookAt(part);
    syncToDisk(part);
    renameSync(part, file);
    syncToDisk(file);
    return { file, bytes: statSync(file).size, found };
  } finally {
    removeDatabase(part);
  }
}

function fileFor(to: string, isFolder: boolean, at: number): string {
  const inFolder = isFolder || (existsSync(to) && statSync(to).isDirectory());
  return inFolder ? join(to, `heelstrip-${timeInName(at)}.db`) : to;
}

async function copyInto(from: string, part: string): Promise<void> {
  const db = openSqlite(from);
  try {
    await sql`vacuum into ${part}`.execute(db);
  } finally {
    await db.destroy();
  }
}

async function lookAt(file: string): Promise<Sound | null> {
  const db = openSqlite(file);
  try {
    await requireSoundPages(db);
    const found = (await isNewest(db)) ? await requireWholeDocuments(db) : null;
    await intoOneFile(db);
    return found;
  } finally {
    await db.destroy();
  }
}
