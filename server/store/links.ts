import type { Kysely } from "kysely";
import { isRole, type Role } from "../../shared/role";
import type { SheetId } from "../../shared/sheet-id";
import type { Schema } from "./schema";
import type { NewLink, StoredLink } from "./store";
import { StoreError } from "./store-error";

export async function addLink(db: Kysely<Schema>, link: NewLink): Promise<void> {
  await db
    .insertInto("links")
    .values({
      id: link.link,
      sheet_id: link.sheet,
      role: link.role,
      secret_sha256: link.secretSha256,
      label: link.label,
      created_at: link.at,
      revoked_at: null,
    })
    .execute();
}

export async function listLinks(db: Kysely<Schema>, sheet: SheetId): Promise<StoredLink[]> {
  const rows = await db
    .selectFrom("links")
    .select(["id", "role", "label", "created_at", "revoked_at"])
    .where("sheet_id", "=", sheet)
    .orderBy("created_at")
    .orderBy("id")
    .execute();
  return rows.map((row) => ({
    link: row.id,
    role: roleIn(row.role),
    label: row.label,
    createdAt: Number(row.created_at),
    revokedAt: row.revoked_at === null ? null : Number(row.revoked_at),
  }));
}

export async function revokeLink(
  db: Kysely<Schema>,
  { sheet, link, at }: { sheet: SheetId; link: string; at: number },
): Promise<"revoked" | "no-such-link"> {
  return db.transaction().execute(async (tx) => {
    const open = await tx
      .selectFrom("links")
      .select(["id", "role"])
      .where("sheet_id", "=", sheet)
      .where("revoked_at", "is", null)
      .execute();
    const found = open.find(({ id }) => id === link);
    if (found === undefined) return "no-such-link";
    if (found.role === "owner" && open.filter(({ role }) => role === "owner").length === 1) {
      throw new StoreError("last-owner", "this is the last link that owns the sheet");
    }
    await tx.updateTable("links").set({ revoked_at: at }).where("id", "=", link).execute();
    return "revoked";
  });
}

/** A role the tables hold and we do not know was written by a newer version: it opens nothing. */
export function roleIn(text: string): Role {
  if (!isRole(text)) throw new StoreError("broken", `the database holds a role ${text}`);
  return text;
}
