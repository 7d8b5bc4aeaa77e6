import { beforeEach, describe, expect, it } from "vitest";
import type { AuditListed, LinkCreated, LinksListed } from "../../shared/api-answers";
import { ask, createSheet, enter } from "../support/hub-under-test";
import { oneHub } from "../support/one-hub";

describe("a link at the owner's doors", () => {
  const hub = oneHub();
  let sheet: string;
  let owner: string;
  let made: LinkCreated;

  const at = (path: string, how: Parameters<typeof ask>[2] = {}) =>
    ask(hub.url, `/api/sheets/${sheet}${path}`, { cookie: owner, ...how });
  const change = (body: unknown) => at(`/links/${made.link}`, { method: "PATCH", body });
  const roleOf = async (cookie: string) => (await at("", { cookie })).body;
  const listed = async () =>
    ((await at("/links")).body as LinksListed).links.find(({ link }) => link === made.link);

  beforeEach(async () => {
    const created = await createSheet(hub.url);
    ({ sheet } = created);
    owner = await enter(hub.url, sheet, created.links.owner);
    const body = { role: "draw", label: "guest" };
    made = (await at("/links", { method: "POST", body })).body as LinkCreated;
  });

  it("is raised and lowered for whoever came in by it", async () => {
    const guest = await enter(hub.url, sheet, made.secret);
    expect(await change({ role: "critique" })).toMatchObject({ status: 204 });
    expect(await roleOf(guest)).toEqual({ sheet, role: "critique" });
    await change({ role: "draw", label: "Ana" });
    expect(await roleOf(guest)).toEqual({ sheet, role: "draw" });
    expect(await listed()).toMatchObject({ role: "draw", label: "Ana", expiresAt: null });
  });

  it("says when it ends and when it was last used, and opens nothing after its end", async () => {
    expect(await listed()).toMatchObject({ expiresAt: null, usedAt: null });
    const before = Date.now();
    const guest = await enter(hub.url, sheet, made.secret);
    expect((await listed())?.usedAt).toBeGreaterThanOrEqual(before);
    const soon = Date.now() + 300;
    expect(await change({ expiresAt: soon })).toMatchObject({ status: 204 });
    expect(await listed()).toMatchObject({ expiresAt: soon });
    await expect.poll(async () => (await at("", { cookie: guest })).status).toBe(404);
    const body = { sheet, secret: made.secret };
    const late = await ask(hub.url, "/api/enter", { method: "POST", body });
    expect(late.status).toBe(404);
    await change({ expiresAt: null });
    expect(await roleOf(guest)).toEqual({ sheet, role: "draw" });
  });

  it("is made with an end", async () => {
    const expiresAt = Date.now() + 3_600_000;
    const { status, body } = await at("/links", {
      method: "POST",
      body: { role: "view", expiresAt },
    });
    expect(status).toBe(201);
    expect(body).toMatchObject({ role: "view", expiresAt });
  });

  it.each([
    [{ role: "king" }, /role/],
    [{ expiresAt: 5 }, /still to come/],
    [{ expiresAt: "tomorrow" }, /a time in ms since 1970, or null/],
    [{ owner: true }, /owner/],
  ])("is not changed by %j", async (body, why) => {
    const before = await listed();
    const { status, body: said } = await change(body);
    expect(status).toBe(422);
    expect((said as { message: string }).message).toMatch(why);
    expect(await listed()).toEqual(before);
  });

  it("cannot be the last owner's and be lowered", async () => {
    const links = ((await at("/links")).body as LinksListed).links;
    const own = links.find(({ role }) => role === "owner")?.link;
    const lowered = await at(`/links/${own}`, { method: "PATCH", body: { role: "draw" } });
    expect(lowered).toMatchObject({ status: 409, body: { code: "last-owner" } });
  });

  it("leaves a record of every change, for the owner to read", async () => {
    await change({ role: "view" });
    await at(`/links/${made.link}`, { method: "DELETE" });
    const { rows } = (await at("/audit")).body as AuditListed;
    expect(rows.map(({ what }) => what)).toEqual([
      ...["link-revoked", "link-changed", "link-made", "sheet-made"],
    ]);
    expect(new Set(rows.slice(0, 3).map(({ who }) => who)).size).toBe(1);
    expect(rows[0]?.who).toMatch(/^[0-9a-f]{12}$/);
    expect(JSON.stringify(rows)).not.toContain(made.secret);
  });
});
