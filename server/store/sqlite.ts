import { Kysely, type SqliteDatabase, SqliteDialect, type SqliteStatement } from "kysely";
import LibSql from "libsql";
import type { Schema } from "./schema";

const BUSY_MS = 2000; // then the call fails and is made again; and a hub that has to go can go
const STATEMENTS_KEPT = 200; // prepared anew each time they would not be freed in a tight loop

/** The same connection in two ways: by built queries, and by text, at once. */
export interface SqliteConnection {
  readonly db: Kysely<Schema>;
  prepare(sql: string): SqliteStatement;
  inTransaction(): boolean;
}

/** SQLite by built queries alone. */
export function openSqlite(file: string): Kysely<Schema> {
  return connectSqlite(file).db;
}

/**
 * SQLite, durable at every commit. The one file that knows the driver, for the driver has traps:
 * it takes the process down on a boolean or a lone buffer, and hands bytes back as ArrayBuffer.
 */
export function connectSqlite(file: string): SqliteConnection {
  const raw = new LibSql(file);
  raw.pragma("journal_mode = WAL");
  raw.pragma("synchronous = FULL");
  raw.pragma("foreign_keys = ON");
  raw.pragma(`busy_timeout = ${BUSY_MS}`);
  const database = guarded(raw);
  return {
    db: new Kysely<Schema>({ dialect: new SqliteDialect({ database }) }),
    prepare: database.prepare,
    inTransaction: () => raw.inTransaction,
  };
}

function guarded(raw: LibSql.Database): SqliteDatabase {
  const kept = new Map<string, LibSql.Statement>();
  const prepared = (sql: string): LibSql.Statement => {
    const known = kept.get(sql);
    if (known !== undefined) return known;
    if (kept.size >= STATEMENTS_KEPT) kept.clear();
    const fresh = raw.prepare(sql);
    kept.set(sql, fresh);
    return fresh;
  };
  return {
    close() {
      kept.clear();
      raw.close();
    },
    prepare(sql) {
      // After a full disk SQLite has rolled back by itself; asking again would hide that error.
      if (sql === "rollback" && !raw.inTransaction) return NOTHING;
      // A transaction that reads before it writes would fail at once if another wrote in between.
      if (sql === "begin") return statement(prepared("begin immediate"));
      return statement(prepared(sql));
    },
  };
}

const NOTHING: SqliteStatement = {
  reader: false,
  all: () => [],
  run: () => ({ changes: 0, lastInsertRowid: 0 }),
  *iterate() {},
};

function statement(inner: LibSql.Statement): SqliteStatement {
  return {
    reader: inner.reader,
    all: (values) => inner.all(values.map(bindable)).map(row),
    run: (values) => inner.run(values.map(bindable)),
    *iterate(values) {
      for (const each of inner.iterate(values.map(bindable))) yield row(each);
    },
  };
}

/** Errors: TypeError on what the driver would choke on. */
function bindable(value: unknown): unknown {
  if (value === null || value instanceof Uint8Array) return value;
  if (typeof value === "number" || typeof value === "string" || typeof value === "bigint") {
    return value;
  }
  if (typeof value === "boolean") return value ? 1 : 0;
  throw new TypeError(`SQLite needs a number, text or bytes, got ${typeof value}`);
}

function row(from: unknown): unknown {
  if (typeof from !== "object" || from === null) return from;
  // In one loop, for a document may be thousands of rows.
  const clean: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(from)) {
    if (name === "_metadata") continue;
    clean[name] = value instanceof ArrayBuffer ? new Uint8Array(value) : value;
  }
  return clean;
}
