import type { Kysely, Selectable, Transaction } from "kysely";
import type { Schema } from "./schema";

/**
 * A restore brings back what was drawn, not who may come in: of each link the later word counts, from
 * whichever of the two databases, and what was revoked in either stays revoked. Devices that have come
 * in since still may. Only sheets that both have are looked at.
 */
export async function carryAccess(from: Kysely<Schema>, tx: Transaction<Schema>): Promise<void> {
  const here = new Set((await tx.selectFrom("sheets").select("id").execute()).map(({ id }) => id));
  const isHere = (row: { readonly sheet_id: string }) => here.has(row.sheet_id);
  const links = (await from.selectFrom("links").selectAll().execute()).filter(isHere);
  const audit = (await from.selectFrom("audit").selectAll().execute()).filter(isHere);
  await carryLinks(tx, links, audit);
  await carryDevices(from, tx, new Set(links.map(({ id }) => id)));
  await carryAudit(tx, audit);
}

type Link = Selectable<Schema["links"]>;
type Deed = Selectable<Schema["audit"]>;

async function carryLinks(
  tx: Transaction<Schema>,
  theirs: readonly Link[],
  deeds: readonly Deed[],
) {
  const ours = new Map(
    (await tx.selectFrom("links").selectAll().execute()).map((link) => [link.id, link]),
  );
  const [saidThere, saidHere] = [
    lastWords(deeds),
    lastWords(await tx.selectFrom("audit").selectAll().execute()),
  ];
  for (const link of theirs) {
    const own = ours.get(link.id);
    if (own === undefined) {
      await tx.insertInto("links").values(link).execute();
      continue;
    }
    const later = (saidHere.get(link.id) ?? 0) > (saidThere.get(link.id) ?? 0) ? own : link;
    const { role, label, expires_at } = later;
    const revoked_at = own.revoked_at ?? link.revoked_at;
    const used_at = Math.max(own.used_at ?? 0, link.used_at ?? 0) || null;
    await tx
      .updateTable("links")
      .set({ role, label, expires_at, revoked_at, used_at })
      .where("id", "=", link.id)
      .execute();
  }
}

/** When each link was last spoken of. */
function lastWords(deeds: readonly Deed[]): Map<string, number> {
  const words = new Map<string, number>();
  for (const { subject, at } of deeds) words.set(subject, Math.max(words.get(subject) ?? 0, at));
  return words;
}

async function carryDevices(
  from: Kysely<Schema>,
  tx: Transaction<Schema>,
  links: ReadonlySet<string>,
): Promise<void> {
  const grants = await from
    .selectFrom("grants")
    .innerJoin("devices", "devices.id_sha256", "grants.device_sha256")
    .select(["link_id", "device_sha256", "grants.created_at", "seen_at"])
    .execute();
  for (const { link_id, device_sha256, created_at, seen_at } of grants) {
    if (!links.has(link_id)) continue;
    await tx
      .insertInto("devices")
      .values({ id_sha256: device_sha256, created_at, seen_at })
      .onConflict((conflict) => conflict.column("id_sha256").doNothing())
      .execute();
    await tx
      .insertInto("grants")
      .values({ link_id, device_sha256, created_at })
      .onConflict((conflict) => conflict.columns(["device_sha256", "link_id"]).doNothing())
      .execute();
  }
}

/** The record of both, in the order of time, each deed once. */
async function carryAudit(tx: Transaction<Schema>, theirs: readonly Deed[]): Promise<void> {
  const own = await tx.selectFrom("audit").selectAll().execute();
  const deeds = new Map([...own, ...theirs].map(({ id, ...deed }) => [JSON.stringify(deed), deed]));
  await tx.deleteFrom("audit").execute();
  for (const deed of [...deeds.values()].sort((a, b) => a.at - b.at)) {
    await tx.insertInto("audit").values(deed).execute();
  }
}
