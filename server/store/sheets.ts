import type { Kysely, Transaction } from "kysely";
import { DOCUMENTS, type DocumentName } from "../../shared/document-name";
import type { SheetId } from "../../shared/sheet-id";
import { addLink } from "./links";
import type { Schema } from "./schema";
import type { NewSheet, StoredDocument } from "./store";

export async function createSheet(db: Kysely<Schema>, sheet: NewSheet): Promise<void> {
  await db.transaction().execute(async (tx) => {
    await tx
      .insertInto("sheets")
      .values({ id: sheet.sheet, generation: 1, created_at: sheet.at })
      .execute();
    for (const name of DOCUMENTS) await createDocument(tx, sheet, name);
    for (const link of sheet.links)
      await addLink(tx, { ...link, sheet: sheet.sheet, at: sheet.at });
  });
}

async function createDocument(
  tx: Transaction<Schema>,
  { sheet, at, documents }: NewSheet,
  name: DocumentName,
): Promise<void> {
  const bytes = documents[name];
  const { id } = await tx
    .insertInto("documents")
    .values({ sheet_id: sheet, name, head: 1, size: bytes.length })
    .returning("id")
    .executeTakeFirstOrThrow();
  await tx.insertInto("updates").values({ document_id: id, seq: 1, at, bytes }).execute();
}

export async function loadDocument(
  db: Kysely<Schema>,
  sheet: SheetId,
  name: DocumentName,
): Promise<StoredDocument | null> {
  const found = await db
    .selectFrom("documents")
    .innerJoin("sheets", "sheets.id", "documents.sheet_id")
    .select(["documents.id", "sheets.generation"])
    .where("documents.sheet_id", "=", sheet)
    .where("documents.name", "=", name)
    .executeTakeFirst();
  if (found === undefined) return null;
  const rows = await db
    .selectFrom("updates")
    .select("bytes")
    .where("document_id", "=", found.id)
    .orderBy("seq")
    .execute();
  return {
    documentId: Number(found.id), // PostgreSQL hands bigints over as text
    generation: found.generation,
    updates: rows.map((row) => row.bytes),
  };
}
