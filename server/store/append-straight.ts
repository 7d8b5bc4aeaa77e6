import type { Appended, DocumentTail, NewBatch } from "./document-records";
import type { SqliteConnection } from "./sqlite";
import {
  type Statements,
  sharesOf,
  type TailRow,
  tailOf,
  valuesToAdvance,
  valuesToInsert,
} from "./updates";

/**
 * What nearly every append is: more updates of documents that are as one left them, by devices that
 * are known. It runs through at once, for the steps of a built query cost more than its statements.
 * Null, and nothing stored, where anything else is the case: then the batch goes the general way.
 *
 * Errors: whatever the driver throws; nothing is stored then
 */
export function appendStraight(
  { prepare, inTransaction }: SqliteConnection,
  { advance, insert }: Statements,
  { id, updates }: NewBatch,
): Appended | null {
  const claims = updates.some((update) => (update.claims ?? []).length > 0);
  if (claims || updates.length === 0 || inTransaction()) return null;
  const stored: DocumentTail[] = [];
  prepare("begin").run([]);
  try {
    for (const share of sharesOf(updates)) {
      const [row] = prepare(advance).all(valuesToAdvance(share, id)) as TailRow[];
      if (row === undefined) {
        prepare("rollback").run([]);
        return null;
      }
      for (const values of valuesToInsert(share, row)) prepare(insert).run(values);
      stored.push(tailOf(row));
    }
    prepare("commit").run([]);
  } catch (error) {
    prepare("rollback").run([]);
    throw error;
  }
  return { stored, refused: [] };
}
