import { CompiledQuery, type Kysely, type Transaction } from "kysely";
import type {
  Appended,
  Claim,
  DocumentTail,
  NewBatch,
  NewUpdate,
  RefusedUpdates,
} from "./document-records";
import type { Schema } from "./schema";

/** What a batch holds for one document, from a room of one generation. */
export interface Share {
  readonly documentId: number;
  readonly generation: number;
  readonly updates: NewUpdate[];
}

/** The row's lock makes the order of numbers the order of commits. */
export async function appendUpdates(
  db: Kysely<Schema>,
  { id, updates }: NewBatch,
): Promise<Appended> {
  if (updates.length === 0) return { stored: [], refused: [] };
  const shares = sharesOf(updates);
  const statements = statementsOf(db);
  return db.transaction().execute(async (tx) => {
    const stored: DocumentTail[] = [];
    const refused: RefusedUpdates[] = [];
    for (const share of shares) {
      const outcome = await appendTo(tx, statements, { share, batch: id });
      if ("reason" in outcome) refused.push(outcome);
      else stored.push(outcome);
    }
    return { stored, refused };
  });
}

async function appendTo(
  tx: Transaction<Schema>,
  { advance, insert }: Statements,
  { share, batch }: { readonly share: Share; readonly batch: string },
): Promise<DocumentTail | RefusedUpdates> {
  const { documentId, generation, updates } = share;
  const claims = updates.flatMap((update) => update.claims ?? []);
  if (claims.length > 0 && !(await claim(tx, share, claims))) {
    return { documentId, generation, reason: "claimed-by-another" };
  }
  const moved = valuesToAdvance(share, batch);
  const { rows } = await tx.executeQuery<TailRow>(CompiledQuery.raw(advance, moved));
  const [row] = rows;
  if (row === undefined) return earlier(tx, share);
  for (const values of valuesToInsert(share, row)) {
    await tx.executeQuery(CompiledQuery.raw(insert, values));
  }
  return tailOf(row);
}

/** The values of `advance`, in the order in which its text asks for them. */
export function valuesToAdvance({ documentId, generation, updates }: Share, batch: string) {
  const bytes = updates.reduce((sum, update) => sum + update.bytes.length, 0);
  return [updates.length, bytes, batch, documentId, generation, batch];
}

/** The values of `insert` for each update, once the document's row has moved on. */
export function valuesToInsert({ documentId, updates }: Share, { head }: TailRow) {
  const first = Number(head) - updates.length + 1;
  return updates.map(({ at, bytes }, index) => [documentId, first + index, at, bytes]);
}

/** What every append runs, as text. */
export interface Statements {
  readonly advance: string;
  readonly insert: string;
}

const built = new WeakMap<Kysely<Schema>, Statements>();

/** Built once for each database: building one costs more than running it. */
export function statementsOf(db: Kysely<Schema>): Statements {
  const known = built.get(db);
  if (known !== undefined) return known;
  const advance = db
    .updateTable("documents")
    .set((eb) => ({ head: eb("head", "+", 0), size: eb("size", "+", 0), last_batch: "" }))
    .where("id", "=", 0)
    .where("generation", "=", 0)
    .where("last_batch", "<>", "")
    .returning(["id", "head", "snap", "snap_bytes", "size"]);
  const insert = db
    .insertInto("updates")
    .values({ document_id: 0, seq: 0, at: 0, bytes: new Uint8Array() });
  const statements = { advance: advance.compile().sql, insert: insert.compile().sql };
  built.set(db, statements);
  return statements;
}

/** Nothing was added: because this batch is there already, or because it came too late. */
async function earlier(
  tx: Transaction<Schema>,
  { documentId, generation }: Share,
): Promise<DocumentTail | RefusedUpdates> {
  const row = await tx
    .selectFrom("documents")
    .select(["id", "head", "snap", "snap_bytes", "size"])
    .where("id", "=", documentId)
    .where("generation", "=", generation)
    .executeTakeFirst();
  return row === undefined ? { documentId, generation, reason: "generation-changed" } : tailOf(row);
}

/** False if another device has one of the ids. Takes the document's row first: claims stand in line. */
async function claim(
  tx: Transaction<Schema>,
  { documentId, generation }: Share,
  claims: readonly Claim[],
): Promise<boolean> {
  const held = await tx
    .updateTable("documents")
    .set((eb) => ({ generation: eb.ref("generation") }))
    .where("id", "=", documentId)
    .where("generation", "=", generation)
    .returning("id")
    .executeTakeFirst();
  if (held === undefined) return true; // the append itself will say what is wrong
  const rows = await tx
    .selectFrom("owners")
    .select(["client_id", "device_sha256"])
    .where("document_id", "=", documentId)
    .where("client_id", "in", [...new Set(claims.map(({ client }) => client))])
    .execute();
  const owners = new Map(rows.map((row) => [Number(row.client_id), row.device_sha256]));
  const fresh = new Map<number, Uint8Array>();
  for (const { client, device } of claims) {
    const owner = owners.get(client) ?? fresh.get(client);
    if (owner === undefined) fresh.set(client, device);
    else if (Buffer.compare(owner, device) !== 0) return false;
  }
  for (const [client, device] of fresh) {
    await tx
      .insertInto("owners")
      .values({ document_id: documentId, client_id: client, device_sha256: device })
      .execute();
  }
  return true;
}

export type TailRow = Pick<Schema["documents"], "head" | "snap" | "snap_bytes" | "size"> & {
  id: number;
};

export function tailOf(row: TailRow): DocumentTail {
  return {
    documentId: Number(row.id),
    head: Number(row.head),
    size: Number(row.size),
    tailRows: Number(row.head) - Number(row.snap),
    tailBytes: Number(row.size) - Number(row.snap_bytes),
  };
}

/** In order of the documents' ids, so that two instances cannot wait for each other's row. */
export function sharesOf(updates: readonly NewUpdate[]): Share[] {
  const shares = new Map<string, Share>();
  for (const update of updates) {
    const { documentId, generation } = update;
    const key = `${documentId}/${generation}`;
    const share = shares.get(key) ?? { documentId, generation, updates: [] };
    share.updates.push(update);
    shares.set(key, share);
  }
  return [...shares.values()].sort((a, b) => a.documentId - b.documentId);
}
