import type { Kysely, Transaction } from "kysely";
import { DOCUMENTS, type DocumentName } from "../../shared/document-name";
import type { SheetId } from "../../shared/sheet-id";
import type { Doer } from "./access-records";
import { note } from "./audit";
import { announce } from "./control";
import { insertLink } from "./links";
import type { Schema } from "./schema";
import type { NewSheet } from "./store";

export async function createSheet(db: Kysely<Schema>, made: NewSheet): Promise<void> {
  const { sheet, at, by, links } = made;
  await db.transaction().execute(async (tx) => {
    await tx.insertInto("sheets").values({ id: sheet, created_at: at }).execute();
    for (const name of DOCUMENTS) await createDocument(tx, made, name);
    for (const link of links) await insertLink(tx, { ...link, sheet, at, by, expiresAt: null });
    const detail = `with ${links.length} links`;
    await note(tx, { sheet, at, by, what: "sheet-made", subject: sheet, detail });
  });
}

async function createDocument(
  tx: Transaction<Schema>,
  { sheet, at, documents }: NewSheet,
  name: DocumentName,
): Promise<void> {
  const bytes = documents[name];
  const begin = { generation: 1, head: 1, snap: 0, snap_bytes: 0, size: bytes.length };
  const free = { last_batch: "", lease_by: "", lease_until: 0 };
  const { id } = await tx
    .insertInto("documents")
    .values({ sheet_id: sheet, name, ...begin, ...free })
    .returning("id")
    .executeTakeFirstOrThrow();
  await tx.insertInto("updates").values({ document_id: id, seq: 1, at, bytes }).execute();
}

export interface Raise {
  readonly sheet: SheetId;
  readonly by: Doer;
  readonly at: number;
}

/** A generation is a time, so that it is new also where nothing is known of a later one. */
export async function raiseGeneration(
  db: Kysely<Schema>,
  { sheet, by, at }: Raise,
): Promise<number | null> {
  return db.transaction().execute(async (tx) => {
    const rows = await tx
      .updateTable("documents")
      .set((eb) => ({ generation: eb("generation", "+", 1) }))
      .where("sheet_id", "=", sheet)
      .returning("generation")
      .execute();
    if (rows.length === 0) return null;
    const raised = Math.max(at, ...rows.map(({ generation }) => Number(generation)));
    await tx
      .updateTable("documents")
      .set({ generation: raised })
      .where("sheet_id", "=", sheet)
      .execute();
    await note(tx, {
      sheet,
      at,
      by,
      what: "generation-raised",
      subject: sheet,
      detail: `${raised}`,
    });
    await announce(tx, { at, what: "generation-raised", subject: sheet });
    return raised;
  });
}
