import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { sql } from "kysely";
import { connectSqlite } from "../../server/store/sqlite";
import { openSqliteStore } from "../../server/store/sqlite-store";
import type { Store } from "../../server/store/store";
import { widenLog } from "../../server/store/widen-log";
import { dice } from "./dice";
import { type DrawnDocument, drawnDocument, sameDocument } from "./drawn-document";
import { letGo } from "./let-go";

export interface PowerCuts {
  readonly cuts: number;
  /** Updates that had been acknowledged when the power went, over all cuts. */
  readonly acknowledged: number;
  /** Bytes of the log that were lost or scrambled, over all cuts. */
  readonly lostBytes: number;
  /** What was not as promised afterwards. */
  readonly faults: readonly string[];
}

/**
 * Draws into a store, and cuts the power at chance moments: what was written after the last
 * acknowledgement is lost from some byte on, and of what was not, a sector may be lost too, for a disk
 * writes in its own order until it is told to sync. Then everything acknowledged has to be there.
 */
export async function cutPower(folder: string, cuts: number, seed: number): Promise<PowerCuts> {
  const roll = dice(seed);
  const file = join(folder, "heelstrip.db");
  const connection = connectSqlite(file);
  const store = await openSqliteStore(connection);
  widenLog(file, connection);
  let drawn = await drawnDocument(store);
  const faults: string[] = [];
  let [acknowledged, lostBytes] = [0, 0];
  for (let cut = 1; cut <= cuts; cut++) {
    if (cut % CUTS_A_DRAWING === 0) drawn = await drawnDocument(store); // or all would take longer and longer
    for (let commits = roll.below(30); commits >= 0; commits--)
      await drawn.draw(1 + roll.below(20));
    if (cut % 5 === 0) await compact(store, drawn);
    const moment = { ...takeMoment(file), promised: drawn.updates.length };
    // What is written on is what may be lost: none of it was acknowledged at that moment.
    for (let commits = roll.below(4); commits > 0; commits--) await drawn.draw(1 + roll.below(20));
    const log = goneOn(moment, readFileSync(`${file}-wal`));
    const end = moment.end + roll.below(log.length - moment.end + 1);
    const left = Buffer.from(log.subarray(0, end));
    if (roll.below(2) === 1) scramble(left, moment.end, roll);
    acknowledged += moment.promised;
    lostBytes += log.length - end;
    const place = join(folder, `cut-${cut}`);
    const fault = await foundAt(place, { ...moment, log: left }, drawn);
    if (fault !== null) faults.push(`cut ${cut} (SEED=${seed}): ${fault}`);
    if (cut % 10 === 0) await letGo();
    rmSync(place, { recursive: true, force: true });
  }
  await store.close();
  return { cuts, acknowledged, lostBytes, faults };
}

interface Moment {
  readonly database: Buffer;
  readonly log: Buffer;
  /** Where the log ended when the last commit was acknowledged. */
  readonly end: number;
}

function takeMoment(file: string): Moment {
  const log = readFileSync(`${file}-wal`);
  return { database: readFileSync(file), log, end: endOf(log) };
}

/** The log as it went on; as it was, where it has begun anew meanwhile. */
function goneOn({ log }: Moment, later: Buffer): Buffer {
  return later.subarray(0, LOG_HEADING).equals(log.subarray(0, LOG_HEADING)) ? later : log;
}

const CUTS_A_DRAWING = 25;
const LOG_HEADING = 32; // bytes; then frames of a heading and a page each
const FRAME_HEADING = 24;
const SECTOR = 512;

/** Frames of the present log have the salt of its heading; what lies behind them is from an earlier one. */
function endOf(log: Buffer): number {
  const salt = log.subarray(16, 24);
  const frame = FRAME_HEADING + log.readUInt32BE(8);
  let end = LOG_HEADING;
  while (end + frame <= log.length && log.subarray(end + 8, end + 16).equals(salt)) end += frame;
  return end;
}

function scramble(log: Buffer, from: number, roll: ReturnType<typeof dice>): void {
  if (log.length <= from) return;
  const at = from + roll.below(log.length - from);
  log.fill(roll.below(256), at, Math.min(log.length, at + SECTOR));
}

async function compact(store: Store, { documentId }: DrawnDocument): Promise<void> {
  await store.compact({ documentId, by: "one", at: 1, atLeast: { rows: 1, bytes: 1 } });
}

/** Opens what the power left, and says what is wrong with it. */
async function foundAt(
  place: string,
  { database, log, promised }: { database: Buffer; log: Buffer; promised: number },
  drawn: DrawnDocument,
): Promise<string | null> {
  mkdirSync(place);
  const file = join(place, "heelstrip.db");
  writeFileSync(file, database);
  writeFileSync(`${file}-wal`, log);
  const connection = connectSqlite(file);
  const store = await openSqliteStore(connection);
  try {
    const loaded = await store.loadDocument(drawn.sheet, "drawing");
    if (loaded === null) return "the sheet is gone";
    if (loaded.head < promised) return `${promised} were acknowledged, ${loaded.head} are there`;
    if (loaded.damagedSnapshots > 0) return "a snapshot is damaged";
    const whole = drawn.updates.slice(0, loaded.head);
    if (!sameDocument(loaded.updates, whole)) return "the document is another";
    const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(
      connection.db,
    );
    return rows[0]?.integrity_check === "ok" ? null : `${rows[0]?.integrity_check}`;
  } finally {
    await store.close();
  }
}
