import { beforeAll, describe, expect, it } from "vitest";
import type { LinkCreated, LinksListed } from "../../shared/api-answers";
import { CLOSE } from "../../shared/close-code";
import { DOCUMENTS } from "../../shared/document-name";
import { mayWrite, ROLES } from "../../shared/role";
import { connect, openPage } from "../support/hub-client";
import { ask, enter, revokedDevice, sheetWithPeople } from "../support/hub-under-test";
import { oneHub } from "../support/one-hub";

describe("each role at each socket", () => {
  const hub = oneHub();
  let url: string;
  let people: Awaited<ReturnType<typeof sheetWithPeople>>;

  beforeAll(async () => {
    ({ url } = hub);
    people = await sheetWithPeople(url);
  });

  const doors = DOCUMENTS.flatMap((document) => ROLES.map((role) => ({ role, document })));

  it.each(doors)("tells $role its role on the $document", async ({ role, document }) => {
    const page = await openPage({
      url,
      sheet: people.sheet,
      document,
      cookie: people.cookies[role],
    });
    expect(page.hello).toMatchObject({ role, document, protocol: 1, generation: 1 });
    expect(page.refused).toEqual([]);
    await page.close();
  });

  it.each(doors)("lets $role change the $document, or not", async ({ role, document }) => {
    const { sheet, cookies } = people;
    const page = await openPage({ url, sheet, document, cookie: cookies[role] });
    const owner = await openPage({ url, sheet, document, cookie: cookies.owner });
    const id = `${role} on ${document}`;
    page.draw(id);
    if (mayWrite(role, document)) {
      await page.allSaved();
      await owner.until(() => owner.strokes().includes(id));
    } else {
      await page.until(() => page.refused.length > 0);
      expect(page.refused).toMatchObject([{ frame: page.sent, code: "role" }]);
      expect(page.saved).toBeLessThan(page.sent);
      const later = await openPage({ url, sheet, document, cookie: cookies.owner });
      expect(later.strokes()).not.toContain(id);
      expect(owner.strokes()).not.toContain(id);
      await later.close();
    }
    await page.close();
    await owner.close();
  });

  it.each(doors)("passes $role's live ink on the $document, or not", async ({ role, document }) => {
    const { sheet, cookies } = people;
    const page = await openPage({ url, sheet, document, cookie: cookies[role] });
    const owner = await openPage({ url, sheet, document, cookie: cookies.owner });
    page.sendLive(7);
    await page.roundTrip();
    await owner.roundTrip();
    expect(owner.live).toHaveLength(mayWrite(role, document) ? 1 : 0);
    await page.close();
    await owner.close();
  });

  it("refuses a viewer's deletion as it refuses a viewer's stroke", async () => {
    const { sheet, cookies } = people;
    const owner = await openPage({ url, sheet, cookie: cookies.owner });
    owner.draw("to be kept");
    await owner.allSaved();
    const viewer = await openPage({ url, sheet, cookie: cookies.view });
    viewer.doc.getMap("strokes").delete("to be kept");
    await viewer.until(() => viewer.refused.length > 0);
    const later = await openPage({ url, sheet, cookie: cookies.owner });
    expect(later.strokes()).toContain("to be kept");
    await Promise.all([owner.close(), viewer.close(), later.close()]);
  });

  it("takes a viewer's answer that only repeats what was rubbed out", async () => {
    const { sheet, cookies } = people;
    const owner = await openPage({ url, sheet, cookie: cookies.owner });
    owner.draw("rubbed out");
    owner.doc.getMap("strokes").delete("rubbed out");
    await owner.allSaved();
    const viewer = await openPage({ url, sheet, cookie: cookies.view });
    const again = await openPage({ url, sheet, cookie: cookies.view, doc: viewer.doc });
    expect(again.refused).toEqual([]);
    expect(again.saved).toBe(again.sent);
    await Promise.all([owner.close(), viewer.close(), again.close()]);
  });

  it.each(DOCUMENTS)("answers strangers alike, whether the %s exists or not", async (document) => {
    const { sheet, cookies } = people;
    const other = await sheetWithPeople(url);
    const revoked = await revokedDevice(url, sheet, cookies.owner);
    const strangers = [undefined, "heelstrip-device=nonsense", other.cookies.owner, revoked];
    for (const cookie of strangers) {
      const device = cookie === undefined ? {} : { cookie };
      await expect(connect({ url, sheet, document, ...device })).rejects.toThrow("status 404");
      const nowhere = connect({ url, sheet: "AAAAAAAAAAAA", document, ...device });
      await expect(nowhere).rejects.toThrow("status 404");
    }
  });

  it("refuses another site's page, with the right cookie", async () => {
    const owner = { url, sheet: people.sheet, cookie: people.cookies.owner };
    for (const origin of ["https://elsewhere.example", "null", "http://127.0.0.1:1"]) {
      await expect(connect({ ...owner, origin })).rejects.toThrow("status 403");
    }
    const own = await connect({ ...owner, origin: url });
    await own.close();
  });

  it("refuses a document that no sheet has, and a client that is no number", async () => {
    const owner = { url, sheet: people.sheet, cookie: people.cookies.owner };
    const document = "versions" as "drawing";
    await expect(connect({ ...owner, document })).rejects.toThrow("status 404");
    await expect(connect({ ...owner, client: -1 })).rejects.toThrow("status 400");
    await expect(connect({ ...owner, client: 2 ** 32 })).rejects.toThrow("status 400");
  });

  it("sends away whoever came by a link that is revoked, and lets nothing more of theirs in", async () => {
    const { sheet, cookies } = people;
    const path = `/api/sheets/${sheet}/links`;
    const made = await ask(url, path, {
      method: "POST",
      cookie: cookies.owner,
      body: { role: "draw", label: "for a day" },
    });
    const { link, secret } = made.body as LinkCreated;
    const guest = { url, sheet, cookie: await enter(url, sheet, secret) };
    const page = await openPage(guest);
    const stays = await openPage({ url, sheet, cookie: cookies.draw });
    page.draw("before");
    await page.allSaved();
    await ask(url, `${path}/${link}`, { method: "DELETE", cookie: cookies.owner });
    page.draw("after");
    await page.until(() => page.closed !== null);
    expect(page.closed).toBe(CLOSE.revoked);
    await stays.roundTrip();
    expect(stays.strokes()).toContain("before");
    expect(stays.strokes()).not.toContain("after");
    expect(stays.closed).toBeNull();
    await expect(connect(guest)).rejects.toThrow("status 404");
    const listed = await ask(url, path, { cookie: cookies.owner });
    const { links } = listed.body as LinksListed;
    expect(links.find((each) => each.link === link)?.revokedAt).toBeTypeOf("number");
    await stays.close();
  });
});
