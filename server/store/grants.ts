import type { Kysely } from "kysely";
import { ROLES } from "../../shared/role";
import type { SheetId } from "../../shared/sheet-id";
import { roleIn } from "./links";
import type { Schema } from "./schema";
import type { Entry, Grant } from "./store";

export async function enter(
  db: Kysely<Schema>,
  { sheet, secretSha256, device, at }: Entry,
): Promise<Grant | null> {
  return db.transaction().execute(async (tx) => {
    const link = await tx
      .selectFrom("links")
      .select(["id", "role"])
      .where("sheet_id", "=", sheet)
      .where("secret_sha256", "=", secretSha256)
      .where("revoked_at", "is", null)
      .executeTakeFirst();
    if (link === undefined) return null;
    await tx
      .insertInto("devices")
      .values({ id_sha256: device, created_at: at, seen_at: at })
      .onConflict((conflict) => conflict.column("id_sha256").doUpdateSet({ seen_at: at }))
      .execute();
    await tx
      .insertInto("grants")
      .values({ device_sha256: device, link_id: link.id, created_at: at })
      .onConflict((conflict) => conflict.columns(["device_sha256", "link_id"]).doNothing())
      .execute();
    return { link: link.id, role: roleIn(link.role) };
  });
}

export async function grantOf(
  db: Kysely<Schema>,
  device: Uint8Array,
  sheet: SheetId,
): Promise<Grant | null> {
  const rows = await db
    .selectFrom("grants")
    .innerJoin("links", "links.id", "grants.link_id")
    .select(["links.id", "links.role"])
    .where("grants.device_sha256", "=", device)
    .where("links.sheet_id", "=", sheet)
    .where("links.revoked_at", "is", null)
    .execute();
  const grants = rows.map((row): Grant => ({ link: row.id, role: roleIn(row.role) }));
  const strength = ({ role }: Grant) => ROLES.indexOf(role);
  return grants.sort((a, b) => strength(a) - strength(b))[0] ?? null;
}
