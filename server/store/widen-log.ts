import { existsSync, statfsSync, statSync } from "node:fs";
import { dirname } from "node:path";
import type { SqliteConnection } from "./sqlite";

/**
 * Bytes. SQLite begins its log anew after 1000 pages of 4 KiB, its own defaults, and writes over what
 * stands there.
 */
const LOG_BYTES = 1000 * 4096;

/** Bytes that must be free; on a smaller disk they are better spent on what people draw. Our own choice, no source. */
const FREE_BYTES = 64 * LOG_BYTES;

/**
 * Makes the log as long as it will get. A sync of bytes that are written over takes half the time of
 * one that makes the file longer, and on a busy disk a tenth: the file system has no new length to
 * write down. Measured. SQLite copies so many pages into the database at once, and the next commit begins
 * the log anew; there they stay, to be drawn into.
 *
 * Errors: whatever the driver throws; the log is sound then
 */
export function widenLog(file: string, { prepare }: SqliteConnection): void {
  prepare("drop table if exists log_filler").run([]); // of a process that was killed here
  const log = `${file}-wal`;
  if (existsSync(log) && statSync(log).size >= LOG_BYTES) return;
  const { bavail, bsize } = statfsSync(dirname(file));
  if (bavail * bsize < FREE_BYTES) return;
  prepare("create table log_filler (bytes blob)").run([]);
  prepare("insert into log_filler values (zeroblob(?))").run([LOG_BYTES]);
  prepare("drop table log_filler").run([]);
}
