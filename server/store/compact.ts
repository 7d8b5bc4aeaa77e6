import { type Kysely, sql } from "kysely";
import { STORE_LIMITS } from "../../shared/limits";
import { condense } from "./condense";
import { type Pieces, readPieces, readSnapshot, sha256Of } from "./documents";
import { readTogether } from "./read-together";
import type { Dialect, Schema } from "./schema";

export interface CompactOrder {
  readonly documentId: number;
  /** The instance that does it: others keep away until it is done, or has not been heard of for long. */
  readonly by: string;
  readonly at: number;
  /** Less than both of these after the newest snapshot is left as it is. */
  readonly atLeast: { readonly rows: number; readonly bytes: number };
}

/**
 * `short`: there is too little to be worth it. `leased`: another does it. `unsound`: the updates do not
 * make a whole document, and all of them stay.
 */
export type Compacted =
  | { readonly outcome: "compacted"; readonly rows: number; readonly bytes: number }
  | { readonly outcome: "short" | "leased" | "unsound" };

/** Where it may be struck down; for the test that does. */
export type CompactPoint = "leased" | "read" | "written" | "deleted" | "released";

/**
 * Puts a document's newest snapshot and the updates after it into a new snapshot, out of the database
 * and not out of anyone's memory. Two snapshots are kept, and every update after the older: should the
 * newest turn out damaged, nothing is missing. Whatever moment it is struck down in, the document
 * loads as before.
 */
export async function compact(
  db: Kysely<Schema>,
  dialect: Dialect,
  order: CompactOrder,
  reached: (point: CompactPoint) => void = () => {},
): Promise<Compacted> {
  if (await isShort(db, order)) return { outcome: "short" };
  if (!(await takeLease(db, order))) return { outcome: "leased" };
  reached("leased");
  try {
    return await compactLeased(db, dialect, order, reached);
  } finally {
    await releaseLease(db, order);
    reached("released");
  }
}

async function compactLeased(
  db: Kysely<Schema>,
  dialect: Dialect,
  order: CompactOrder,
  reached: (point: CompactPoint) => void,
): Promise<Compacted> {
  const { documentId } = order;
  const pieces = await readTogether(db, dialect, (together) => readPieces(together, documentId));
  reached("read");
  const bytes = condense(pieces.updates);
  if (bytes === null) return { outcome: "unsound" };
  if (!(await writeSnapshot(db, { order, pieces, bytes }))) return { outcome: "leased" };
  reached("written");
  // Only what has come back from the database is worth a deletion.
  if ((await readSnapshot(db, documentId, pieces.head)) === null) return { outcome: "unsound" };
  await deleteUpTo(db, { documentId, base: pieces.base, reached });
  return { outcome: "compacted", rows: pieces.head - pieces.base, bytes: bytes.length };
}

async function isShort(
  db: Kysely<Schema>,
  { documentId, atLeast }: CompactOrder,
): Promise<boolean> {
  const row = await db
    .selectFrom("documents")
    .select(["head", "snap", "size", "snap_bytes"])
    .where("id", "=", documentId)
    .executeTakeFirst();
  if (row === undefined) return true;
  const rows = Number(row.head) - Number(row.snap);
  const bytes = Number(row.size) - Number(row.snap_bytes);
  return rows === 0 || (rows < atLeast.rows && bytes < atLeast.bytes);
}

async function takeLease(
  db: Kysely<Schema>,
  { documentId, by, at }: CompactOrder,
): Promise<boolean> {
  const taken = await db
    .updateTable("documents")
    .set({ lease_by: by, lease_until: at + STORE_LIMITS.leaseMs })
    .where("id", "=", documentId)
    .where((eb) => eb.or([eb("lease_by", "=", by), eb("lease_until", "<", at)]))
    .returning("id")
    .executeTakeFirst();
  return taken !== undefined;
}

async function releaseLease(db: Kysely<Schema>, { documentId, by }: CompactOrder): Promise<void> {
  await db
    .updateTable("documents")
    .set({ lease_by: "", lease_until: 0 })
    .where("id", "=", documentId)
    .where("lease_by", "=", by)
    .execute();
}

interface Written {
  readonly order: CompactOrder;
  readonly pieces: Pieces;
  readonly bytes: Uint8Array;
}

/** False if the lease was lost, or the document put back to an older state meanwhile. */
async function writeSnapshot(
  db: Kysely<Schema>,
  { order, pieces, bytes }: Written,
): Promise<boolean> {
  const { documentId, by, at } = order;
  const { head, base, generation } = pieces;
  return db.transaction().execute(async (tx) => {
    const since = sql<number>`(select coalesce(sum(length(bytes)), 0) from updates
      where document_id = ${documentId} and seq > ${head})`;
    const held = await tx
      .updateTable("documents")
      .set({ snap: head, snap_bytes: bytes.length, size: sql`${bytes.length} + ${since}` })
      .where("id", "=", documentId)
      .where("lease_by", "=", by)
      .where("generation", "=", generation)
      .returning("id")
      .executeTakeFirst();
    if (held === undefined) return false;
    await tx
      .deleteFrom("snapshots")
      .where("document_id", "=", documentId)
      .where("seq", "<>", base)
      .execute();
    await tx
      .insertInto("snapshots")
      .values({ document_id: documentId, seq: head, at, sha256: sha256Of(bytes), bytes })
      .execute();
    return true;
  });
}

interface Below {
  readonly documentId: number;
  /** What the older of the two snapshots holds. */
  readonly base: number;
  readonly reached: (point: CompactPoint) => void;
}

async function deleteUpTo(db: Kysely<Schema>, { documentId, base, reached }: Below): Promise<void> {
  for (;;) {
    const { first } = await db
      .selectFrom("updates")
      .select((eb) => eb.fn.min("seq").as("first"))
      .where("document_id", "=", documentId)
      .executeTakeFirstOrThrow();
    if (first === null || Number(first) > base) return;
    const end = Math.min(base, Number(first) + STORE_LIMITS.deleteStep - 1);
    await db
      .deleteFrom("updates")
      .where("document_id", "=", documentId)
      .where("seq", "<=", end)
      .execute();
    reached("deleted");
  }
}
