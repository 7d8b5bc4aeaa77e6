import type { Kysely, Transaction } from "kysely";
import { isRole, type Role } from "../../shared/role";
import type { SheetId } from "../../shared/sheet-id";
import type { LinkChange, NewLink, Revocation, StoredLink } from "./access-records";
import { note } from "./audit";
import { announce } from "./control";
import type { Schema } from "./schema";
import { StoreError } from "./store-error";

export async function addLink(db: Kysely<Schema>, link: NewLink): Promise<void> {
  await db.transaction().execute(async (tx) => {
    await insertLink(tx, link);
    const { sheet, at, by } = link;
    const detail = inWords(link);
    await note(tx, { sheet, at, by, what: "link-made", subject: link.link, detail });
  });
}

export async function insertLink(tx: Transaction<Schema>, link: NewLink): Promise<void> {
  await tx
    .insertInto("links")
    .values({
      id: link.link,
      sheet_id: link.sheet,
      role: link.role,
      secret_sha256: link.secretSha256,
      label: link.label,
      created_at: link.at,
      expires_at: link.expiresAt,
      revoked_at: null,
      used_at: null,
    })
    .execute();
}

export async function listLinks(db: Kysely<Schema>, sheet: SheetId): Promise<StoredLink[]> {
  const rows = await db
    .selectFrom("links")
    .select(["id", "role", "label", "created_at", "expires_at", "revoked_at", "used_at"])
    .where("sheet_id", "=", sheet)
    .orderBy("created_at")
    .orderBy("id")
    .execute();
  return rows.map((row) => ({
    link: row.id,
    role: roleIn(row.role),
    label: row.label,
    createdAt: Number(row.created_at),
    expiresAt: timeIn(row.expires_at),
    revokedAt: timeIn(row.revoked_at),
    usedAt: timeIn(row.used_at),
  }));
}

export async function changeLink(
  db: Kysely<Schema>,
  change: LinkChange,
): Promise<"changed" | "no-such-link"> {
  const { sheet, link, at, by } = change;
  return db.transaction().execute(async (tx) => {
    const before = (await openLinks(tx, sheet)).find(({ id }) => id === link);
    if (before === undefined) return "no-such-link";
    const { role = roleIn(before.role), label = before.label } = change;
    const { expiresAt = timeIn(before.expires_at) } = change;
    await tx
      .updateTable("links")
      .set({ role, label, expires_at: expiresAt })
      .where("id", "=", link)
      .execute();
    await requireOwner(tx, sheet);
    const detail = `${inWords(linkIn(before))} → ${inWords({ role, label, expiresAt })}`;
    await note(tx, { sheet, at, by, what: "link-changed", subject: link, detail });
    await announce(tx, { at, what: "link-changed", subject: link });
    return "changed";
  });
}

export async function revokeLink(
  db: Kysely<Schema>,
  { sheet, link, at, by }: Revocation,
): Promise<"revoked" | "no-such-link"> {
  return db.transaction().execute(async (tx) => {
    const found = (await openLinks(tx, sheet)).find(({ id }) => id === link);
    if (found === undefined) return "no-such-link";
    await tx.updateTable("links").set({ revoked_at: at }).where("id", "=", link).execute();
    await requireOwner(tx, sheet);
    const detail = inWords(linkIn(found));
    await note(tx, { sheet, at, by, what: "link-revoked", subject: link, detail });
    await announce(tx, { at, what: "link-revoked", subject: link });
    return "revoked";
  });
}

/** Takes the sheet's row first: of two at once, the second sees what the first has left. */
async function openLinks(tx: Transaction<Schema>, sheet: SheetId) {
  await tx
    .updateTable("sheets")
    .set((eb) => ({ created_at: eb.ref("created_at") }))
    .where("id", "=", sheet)
    .execute();
  return tx
    .selectFrom("links")
    .select(["id", "role", "label", "expires_at"])
    .where("sheet_id", "=", sheet)
    .where("revoked_at", "is", null)
    .execute();
}

/** A link that ends leaves a sheet without an owner some day: one has to be left that does not. */
async function requireOwner(tx: Transaction<Schema>, sheet: SheetId): Promise<void> {
  const lasting = await tx
    .selectFrom("links")
    .select("id")
    .where("sheet_id", "=", sheet)
    .where("role", "=", "owner")
    .where("revoked_at", "is", null)
    .where("expires_at", "is", null)
    .executeTakeFirst();
  if (lasting !== undefined) return;
  throw new StoreError("last-owner", "this is the last link that owns the sheet for good");
}

interface InWords {
  readonly role: Role;
  readonly label: string;
  readonly expiresAt: number | null;
}

function inWords({ role, label, expiresAt }: InWords): string {
  const name = label === "" ? "" : ` “${label}”`;
  const end = expiresAt === null ? "" : ` until ${new Date(expiresAt).toISOString()}`;
  return `${role}${name}${end}`;
}

function linkIn(row: Pick<Schema["links"], "role" | "label" | "expires_at">): InWords {
  return { role: roleIn(row.role), label: row.label, expiresAt: timeIn(row.expires_at) };
}

/** PostgreSQL hands bigints over as text. */
export function timeIn(column: number | null): number | null {
  return column === null ? null : Number(column);
}

/** A role the tables hold and we do not know was written by a newer version: it opens nothing. */
export function roleIn(text: string): Role {
  if (!isRole(text)) throw new StoreError("broken", `the database holds a role ${text}`);
  return text;
}
