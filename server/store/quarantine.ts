import type { Kysely } from "kysely";
import { STORE_LIMITS } from "../../shared/limits";
import type { Schema } from "./schema";

export interface NewQuarantined {
  readonly documentId: number;
  readonly at: number;
  /** Who sent it; null where nobody did. */
  readonly device: Uint8Array | null;
  readonly reason: string;
  readonly bytes: Uint8Array;
}

/** Of what is too long only the beginning is kept; `size` says how long it was. */
export interface Quarantined extends NewQuarantined {
  readonly size: number;
}

export async function quarantine(
  db: Kysely<Schema>,
  { documentId, at, device, reason, bytes }: NewQuarantined,
): Promise<void> {
  await db.transaction().execute(async (tx) => {
    await tx
      .insertInto("quarantine")
      .values({
        document_id: documentId,
        at,
        device_sha256: device,
        reason,
        size: bytes.length,
        bytes: bytes.slice(0, STORE_LIMITS.quarantinedBytes),
      })
      .execute();
    const newest = tx
      .selectFrom("quarantine")
      .select("id")
      .where("document_id", "=", documentId)
      .orderBy("id", "desc")
      .limit(STORE_LIMITS.quarantined);
    await tx
      .deleteFrom("quarantine")
      .where("document_id", "=", documentId)
      .where("id", "not in", newest)
      .execute();
  });
}

export async function listQuarantine(
  db: Kysely<Schema>,
  documentId: number,
): Promise<Quarantined[]> {
  const rows = await db
    .selectFrom("quarantine")
    .select(["at", "device_sha256", "reason", "size", "bytes"])
    .where("document_id", "=", documentId)
    .orderBy("id", "desc")
    .execute();
  return rows.map((row) => ({
    documentId,
    at: Number(row.at),
    device: row.device_sha256,
    reason: row.reason,
    size: Number(row.size),
    bytes: row.bytes,
  }));
}
