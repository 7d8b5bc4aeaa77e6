import { createHash, timingSafeEqual } from "node:crypto";
import type { Kysely } from "kysely";
import type { DocumentName } from "../../shared/document-name";
import type { SheetId } from "../../shared/sheet-id";
import type { Claim, StoredDocument } from "./document-records";
import { readTogether } from "./read-together";
import type { Dialect, Schema } from "./schema";
import { StoreError } from "./store-error";

export async function loadDocument(
  db: Kysely<Schema>,
  dialect: Dialect,
  { sheet, name }: { readonly sheet: SheetId; readonly name: DocumentName },
): Promise<StoredDocument | null> {
  return readTogether(db, dialect, async (together) => {
    const found = await together
      .selectFrom("documents")
      .select("id")
      .where("sheet_id", "=", sheet)
      .where("name", "=", name)
      .executeTakeFirst();
    // PostgreSQL hands bigints over as text, here and below.
    return found === undefined ? null : readDocument(together, Number(found.id));
  });
}

async function readDocument(db: Kysely<Schema>, documentId: number): Promise<StoredDocument> {
  const pieces = await readPieces(db, documentId);
  return {
    documentId,
    generation: pieces.generation,
    head: pieces.head,
    size: pieces.updates.reduce((sum, { length }) => sum + length, 0),
    updates: pieces.updates,
    owners: await ownersOf(db, documentId),
    damagedSnapshots: pieces.damagedSnapshots,
  };
}

/** What a document is put together from. */
export interface Pieces {
  readonly generation: number;
  readonly head: number;
  /** The number the snapshot goes up to; 0 without one. */
  readonly base: number;
  readonly updates: readonly Uint8Array[];
  readonly damagedSnapshots: number;
}

/**
 * The newest snapshot that is what was written, and every update after it.
 *
 * Errors:  StoreError "damaged" if one of those is missing: a document with a hole is not served
 */
export async function readPieces(db: Kysely<Schema>, documentId: number): Promise<Pieces> {
  const { generation, head } = await db
    .selectFrom("documents")
    .select(["generation", "head"])
    .where("id", "=", documentId)
    .executeTakeFirstOrThrow();
  const { base, snapshot, damaged } = await soundSnapshot(db, documentId);
  const rows = await db
    .selectFrom("updates")
    .select("bytes")
    .where("document_id", "=", documentId)
    .where("seq", ">", base)
    .orderBy("seq")
    .execute();
  const expected = Number(head) - base;
  if (rows.length !== expected) {
    const said = `document ${documentId} needs ${expected} updates after ${base}, found ${rows.length}`;
    throw new StoreError("damaged", said);
  }
  return {
    generation: Number(generation),
    head: Number(head),
    base,
    updates: [...snapshot, ...rows.map((row) => row.bytes)],
    damagedSnapshots: damaged,
  };
}

interface Sound {
  readonly base: number;
  readonly snapshot: readonly Uint8Array[];
  readonly damaged: number;
}

async function soundSnapshot(db: Kysely<Schema>, documentId: number): Promise<Sound> {
  const kept = await db
    .selectFrom("snapshots")
    .select("seq")
    .where("document_id", "=", documentId)
    .orderBy("seq", "desc")
    .execute();
  for (const [damaged, { seq }] of kept.entries()) {
    const bytes = await readSnapshot(db, documentId, seq);
    if (bytes !== null) return { base: Number(seq), snapshot: [bytes], damaged };
  }
  return { base: 0, snapshot: [], damaged: kept.length };
}

/** A snapshot's bytes; null if they are not those that were written. */
export async function readSnapshot(
  db: Kysely<Schema>,
  documentId: number,
  seq: number,
): Promise<Uint8Array | null> {
  const found = await db
    .selectFrom("snapshots")
    .select(["sha256", "bytes"])
    .where("document_id", "=", documentId)
    .where("seq", "=", seq)
    .executeTakeFirst();
  if (found === undefined) return null;
  const sum = sha256Of(found.bytes);
  return found.sha256.length === sum.length && timingSafeEqual(sum, found.sha256)
    ? found.bytes
    : null;
}

export function sha256Of(bytes: Uint8Array): Uint8Array {
  return new Uint8Array(createHash("sha256").update(bytes).digest());
}

async function ownersOf(db: Kysely<Schema>, documentId: number): Promise<Claim[]> {
  const rows = await db
    .selectFrom("owners")
    .select(["client_id", "device_sha256"])
    .where("document_id", "=", documentId)
    .execute();
  return rows.map((row) => ({ client: Number(row.client_id), device: row.device_sha256 }));
}
