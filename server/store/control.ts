import type { Kysely, Transaction } from "kysely";
import { STORE_LIMITS } from "../../shared/limits";
import type { ControlRow } from "./access-records";
import type { Schema } from "./schema";

/**
 * Tells all instances, with the change itself. The counter's row is locked until the commit, so that
 * whoever follows the numbers passes over none.
 */
export async function announce(
  tx: Transaction<Schema>,
  { at, what, subject }: Omit<ControlRow, "id">,
): Promise<void> {
  const { value } = await tx
    .updateTable("counters")
    .set((eb) => ({ value: eb("value", "+", 1) }))
    .where("name", "=", "control")
    .returning("value")
    .executeTakeFirstOrThrow();
  await tx
    .insertInto("control")
    .values({ id: Number(value), at, what, subject })
    .execute();
  await tx
    .deleteFrom("control")
    .where("at", "<", at - STORE_LIMITS.controlKeptMs)
    .execute();
}

export async function controlAfter(db: Kysely<Schema>, id: number): Promise<ControlRow[]> {
  const rows = await db
    .selectFrom("control")
    .selectAll()
    .where("id", ">", id)
    .orderBy("id")
    .execute();
  return rows.map((row) => ({
    id: Number(row.id),
    at: Number(row.at),
    what: row.what as ControlRow["what"],
    subject: row.subject,
  }));
}

/** Errors: StoreError, when nothing can be written. */
export async function probe(db: Kysely<Schema>, at: number): Promise<void> {
  await db.updateTable("counters").set({ value: at }).where("name", "=", "probe").execute();
}
