import { type Kysely, type Migration, Migrator, sql } from "kysely";
import { firmTables } from "./firm-tables";
import type { Dialect, Schema } from "./schema";

/**
 * Every step, by its name and in order. A step that has been released is never edited: what comes
 * later is a step of its own.
 */
const STEPS = {
  "0001-first-tables": firstTables,
  "0002-blobs": blobTable,
  "0003-firm-tables": firmTables,
} as const;

export type MigrationStep = keyof typeof STEPS;
export const MIGRATION_STEPS: readonly string[] = Object.keys(STEPS);

/** Brings the tables to their newest form, or to that after a certain step. */
export async function migrate(
  db: Kysely<Schema>,
  dialect: Dialect,
  upTo?: MigrationStep,
): Promise<void> {
  const migrations = Object.fromEntries(
    Object.entries(STEPS).map(([name, step]): [string, Migration] => [
      name,
      { up: (to) => step(to, dialect) },
    ]),
  );
  const migrator = new Migrator({ db, provider: { getMigrations: async () => migrations } });
  const { error } = await (upTo === undefined
    ? migrator.migrateToLatest()
    : migrator.migrateTo(upTo));
  if (error !== undefined) throw error;
}

async function firstTables(db: Kysely<unknown>, dialect: Dialect): Promise<void> {
  const { schema } = db;
  await schema
    .createTable("sheets")
    .addColumn("id", "text", (column) => column.primaryKey())
    .addColumn("generation", "integer", (column) => column.notNull())
    .addColumn("created_at", "bigint", (column) => column.notNull())
    .execute();
  await schema
    .createTable("documents")
    .addColumn("id", dialect.counted, (column) => column.primaryKey())
    .addColumn("sheet_id", "text", (column) => column.notNull().references("sheets.id"))
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("head", "bigint", (column) => column.notNull())
    .addColumn("size", "bigint", (column) => column.notNull())
    .addUniqueConstraint("documents_by_name", ["sheet_id", "name"])
    .execute();
  const updates = schema
    .createTable("updates")
    .addColumn("document_id", "bigint", (column) => column.notNull().references("documents.id"))
    .addColumn("seq", "bigint", (column) => column.notNull())
    .addColumn("at", "bigint", (column) => column.notNull())
    .addColumn("bytes", sql.raw(dialect.bytes), (column) => column.notNull())
    .addPrimaryKeyConstraint("updates_in_order", ["document_id", "seq"]);
  // SQLite keeps such a table in the order of its key: a document's updates lie side by side.
  await (dialect.name === "sqlite" ? updates.modifyEnd(sql`without rowid`) : updates).execute();
  await accessTables(db, dialect);
}

async function accessTables(db: Kysely<unknown>, dialect: Dialect): Promise<void> {
  const bytes = sql.raw(dialect.bytes);
  const { schema } = db;
  await schema
    .createTable("links")
    .addColumn("id", "text", (column) => column.primaryKey())
    .addColumn("sheet_id", "text", (column) => column.notNull().references("sheets.id"))
    .addColumn("role", "text", (column) => column.notNull())
    .addColumn("secret_sha256", bytes, (column) => column.notNull().unique())
    .addColumn("label", "text", (column) => column.notNull())
    .addColumn("created_at", "bigint", (column) => column.notNull())
    .addColumn("revoked_at", "bigint")
    .execute();
  await schema.createIndex("links_by_sheet").on("links").column("sheet_id").execute();
  await schema
    .createTable("devices")
    .addColumn("id_sha256", bytes, (column) => column.primaryKey())
    .addColumn("created_at", "bigint", (column) => column.notNull())
    .addColumn("seen_at", "bigint", (column) => column.notNull())
    .execute();
  await schema
    .createTable("grants")
    .addColumn("device_sha256", bytes, (column) => column.notNull().references("devices.id_sha256"))
    .addColumn("link_id", "text", (column) => column.notNull().references("links.id"))
    .addColumn("created_at", "bigint", (column) => column.notNull())
    .addPrimaryKeyConstraint("grants_once", ["device_sha256", "link_id"])
    .execute();
}

async function blobTable(db: Kysely<unknown>, dialect: Dialect): Promise<void> {
  await db.schema
    .createTable("blobs")
    .addColumn("sheet_id", "text", (column) => column.notNull().references("sheets.id"))
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("media_type", "text", (column) => column.notNull())
    .addColumn("size", "integer", (column) => column.notNull())
    .addColumn("bytes", sql.raw(dialect.bytes), (column) => column.notNull())
    .addColumn("created_at", "bigint", (column) => column.notNull())
    .addPrimaryKeyConstraint("blobs_once", ["sheet_id", "id"])
    .execute();
}
