import { CompiledQuery, type Kysely, type Transaction } from "kysely";
import type { Schema } from "./schema";
import type { NewUpdate } from "./store";

/**
 * Documents go in order of their ids, so that two instances cannot wait for each other's row. The
 * row's lock also makes the order of numbers the order of commits.
 */
export async function appendUpdates(
  db: Kysely<Schema>,
  updates: readonly NewUpdate[],
): Promise<void> {
  if (updates.length === 0) return;
  const inOrder = [...byDocument(updates)].sort(([a], [b]) => a - b);
  await db.transaction().execute(async (tx) => {
    for (const [documentId, list] of inOrder) await appendTo(tx, documentId, list);
  });
}

async function appendTo(
  tx: Transaction<Schema>,
  documentId: number,
  updates: readonly NewUpdate[],
): Promise<void> {
  const bytes = updates.reduce((sum, update) => sum + update.bytes.length, 0);
  const { head } = await tx
    .updateTable("documents")
    .set((eb) => ({ head: eb("head", "+", updates.length), size: eb("size", "+", bytes) }))
    .where("id", "=", documentId)
    .returning("head")
    .executeTakeFirstOrThrow();
  const first = Number(head) - updates.length + 1;
  // Compiled once for the whole list: building the query costs more than running it.
  const { sql } = tx
    .insertInto("updates")
    .values({ document_id: 0, seq: 0, at: 0, bytes: new Uint8Array() })
    .compile();
  for (const [index, update] of updates.entries()) {
    const values = [documentId, first + index, update.at, update.bytes];
    await tx.executeQuery(CompiledQuery.raw(sql, values));
  }
}

function byDocument(updates: readonly NewUpdate[]): Map<number, NewUpdate[]> {
  const lists = new Map<number, NewUpdate[]>();
  for (const update of updates) {
    const list = lists.get(update.documentId);
    if (list === undefined) lists.set(update.documentId, [update]);
    else list.push(update);
  }
  return lists;
}
