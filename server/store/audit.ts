import type { Kysely, Transaction } from "kysely";
import type { SheetId } from "../../shared/sheet-id";
import { AUDITED, type Audited, type AuditRow, type Doer } from "./access-records";
import type { Schema } from "./schema";
import { StoreError } from "./store-error";

const WHO_DIGITS = 12; // enough to tell devices apart, and nothing that opens a door

export interface Deed {
  readonly sheet: SheetId;
  readonly at: number;
  readonly by: Doer;
  readonly what: Audited;
  readonly subject: string;
  readonly detail: string;
}

/** Writes down who did what, in the transaction that does it. */
export async function note(tx: Transaction<Schema>, deed: Deed): Promise<void> {
  const { sheet, at, by, what, subject, detail } = deed;
  const who = by === null ? "server" : Buffer.from(by).toString("hex").slice(0, WHO_DIGITS);
  await tx
    .insertInto("audit")
    .values({ sheet_id: sheet, at, who, what, subject, detail })
    .execute();
}

export async function listAudit(
  db: Kysely<Schema>,
  sheet: SheetId,
  most: number,
): Promise<AuditRow[]> {
  const rows = await db
    .selectFrom("audit")
    .select(["at", "who", "what", "subject", "detail"])
    .where("sheet_id", "=", sheet)
    .orderBy("id", "desc")
    .limit(most)
    .execute();
  return rows.map((row) => ({ ...row, at: Number(row.at), what: auditedIn(row.what) }));
}

function auditedIn(text: string): Audited {
  const known = AUDITED.find((what) => what === text);
  if (known === undefined) throw new StoreError("broken", `the database holds a deed ${text}`);
  return known;
}
