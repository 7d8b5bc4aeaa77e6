import { type Kysely, sql } from "kysely";
import type { Dialect } from "./schema";

/**
 * The step that makes what is stored firm: snapshots, owners of client ids, generations in the row
 * that an append locks, links that end, and a record of who changed what.
 */
export async function firmTables(db: Kysely<unknown>, dialect: Dialect): Promise<void> {
  await documentColumns(db);
  await documentTables(db, dialect);
  await db.schema.alterTable("links").addColumn("expires_at", "bigint").execute();
  await db.schema.alterTable("links").addColumn("used_at", "bigint").execute();
  await recordTables(db, dialect);
}

async function documentColumns(db: Kysely<unknown>): Promise<void> {
  const documents = () => db.schema.alterTable("documents");
  const numbers = { generation: 1, snap: 0, snap_bytes: 0, lease_until: 0 };
  for (const [name, begin] of Object.entries(numbers)) {
    await documents()
      .addColumn(name, "bigint", (column) => column.notNull().defaultTo(begin))
      .execute();
  }
  for (const name of ["last_batch", "lease_by"]) {
    await documents()
      .addColumn(name, "text", (column) => column.notNull().defaultTo(""))
      .execute();
  }
  await sql`update documents set generation =
    (select generation from sheets where sheets.id = documents.sheet_id)`.execute(db);
  await db.schema.alterTable("sheets").dropColumn("generation").execute();
}

async function documentTables(db: Kysely<unknown>, dialect: Dialect): Promise<void> {
  const bytes = sql.raw(dialect.bytes);
  await db.schema
    .createTable("snapshots")
    .addColumn("document_id", "bigint", (column) => column.notNull().references("documents.id"))
    .addColumn("seq", "bigint", (column) => column.notNull())
    .addColumn("at", "bigint", (column) => column.notNull())
    .addColumn("sha256", bytes, (column) => column.notNull())
    .addColumn("bytes", bytes, (column) => column.notNull())
    .addPrimaryKeyConstraint("snapshots_in_order", ["document_id", "seq"])
    .execute();
  await db.schema
    .createTable("owners")
    .addColumn("document_id", "bigint", (column) => column.notNull().references("documents.id"))
    .addColumn("client_id", "bigint", (column) => column.notNull())
    .addColumn("device_sha256", bytes, (column) => column.notNull())
    .addPrimaryKeyConstraint("owners_once", ["document_id", "client_id"])
    .execute();
  await db.schema
    .createTable("quarantine")
    .addColumn("id", dialect.counted, (column) => column.primaryKey())
    .addColumn("document_id", "bigint", (column) => column.notNull().references("documents.id"))
    .addColumn("at", "bigint", (column) => column.notNull())
    .addColumn("device_sha256", bytes)
    .addColumn("reason", "text", (column) => column.notNull())
    .addColumn("size", "bigint", (column) => column.notNull())
    .addColumn("bytes", bytes, (column) => column.notNull())
    .execute();
  await db.schema
    .createIndex("quarantine_by_document")
    .on("quarantine")
    .columns(["document_id", "id"])
    .execute();
}

async function recordTables(db: Kysely<unknown>, dialect: Dialect): Promise<void> {
  await db.schema
    .createTable("audit")
    .addColumn("id", dialect.counted, (column) => column.primaryKey())
    .addColumn("at", "bigint", (column) => column.notNull())
    .addColumn("sheet_id", "text", (column) => column.notNull().references("sheets.id"))
    .addColumn("who", "text", (column) => column.notNull())
    .addColumn("what", "text", (column) => column.notNull())
    .addColumn("subject", "text", (column) => column.notNull())
    .addColumn("detail", "text", (column) => column.notNull())
    .execute();
  await db.schema.createIndex("audit_by_sheet").on("audit").columns(["sheet_id", "id"]).execute();
  await db.schema
    .createTable("control")
    .addColumn("id", "bigint", (column) => column.primaryKey())
    .addColumn("at", "bigint", (column) => column.notNull())
    .addColumn("what", "text", (column) => column.notNull())
    .addColumn("subject", "text", (column) => column.notNull())
    .execute();
  await db.schema
    .createTable("counters")
    .addColumn("name", "text", (column) => column.primaryKey())
    .addColumn("value", "bigint", (column) => column.notNull())
    .execute();
  await sql`insert into counters (name, value) values ('control', 0), ('probe', 0)`.execute(db);
}
