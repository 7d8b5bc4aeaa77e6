import { timingSafeEqual } from "node:crypto";
import type { Kysely } from "kysely";
import { ROLES } from "../../shared/role";
import type { SheetId } from "../../shared/sheet-id";
import type { Entry, Grant } from "./access-records";
import { roleIn, timeIn } from "./links";
import type { Schema } from "./schema";

export async function enter(
  db: Kysely<Schema>,
  { sheet, secretSha256, device, at }: Entry,
): Promise<Grant | null> {
  return db.transaction().execute(async (tx) => {
    const link = await tx
      .selectFrom("links")
      .select(["id", "role", "expires_at", "secret_sha256"])
      .where("sheet_id", "=", sheet)
      .where("secret_sha256", "=", secretSha256)
      .where("revoked_at", "is", null)
      .where((eb) => eb.or([eb("expires_at", "is", null), eb("expires_at", ">", at)]))
      .executeTakeFirst();
    // The index compares in its own way and time; what counts is this comparison.
    if (link === undefined || !timingSafeEqual(link.secret_sha256, secretSha256)) return null;
    await tx.updateTable("links").set({ used_at: at }).where("id", "=", link.id).execute();
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
    return { link: link.id, role: roleIn(link.role), expiresAt: timeIn(link.expires_at) };
  });
}

export interface Asked {
  readonly device: Uint8Array;
  readonly sheet: SheetId;
  readonly at: number;
}

export async function grantOf(
  db: Kysely<Schema>,
  { device, sheet, at }: Asked,
): Promise<Grant | null> {
  const rows = await db
    .selectFrom("grants")
    .innerJoin("links", "links.id", "grants.link_id")
    .select(["links.id", "links.role", "links.expires_at"])
    .where("grants.device_sha256", "=", device)
    .where("links.sheet_id", "=", sheet)
    .where("links.revoked_at", "is", null)
    .where((eb) => eb.or([eb("links.expires_at", "is", null), eb("links.expires_at", ">", at)]))
    .execute();
  const grants = rows.map(
    (row): Grant => ({
      link: row.id,
      role: roleIn(row.role),
      expiresAt: timeIn(row.expires_at),
    }),
  );
  return grants.sort(byStrength)[0] ?? null;
}

/** The strongest first; of equals the one that lasts longest. */
function byStrength(a: Grant, b: Grant): number {
  const end = ({ expiresAt }: Grant) => expiresAt ?? Number.POSITIVE_INFINITY;
  const stronger = ROLES.indexOf(a.role) - ROLES.indexOf(b.role);
  return stronger || (end(a) === end(b) ? 0 : end(b) - end(a));
}
