import { describe, expect, it } from "vitest";
import type { LinksListed } from "../../shared/api-answers";
import { readPresence } from "../../shared/presence";
import { openPage } from "../support/hub-client";
import { ask, createSheet, enter } from "../support/hub-under-test";
import { oneHub } from "../support/one-hub";

const WORDS = [
  "</script><script>alert(1)</script>",
  '"><img src=x onerror=alert(1)>',
  "'; drop table sheets; --",
  "\u202eevil\u0000\r\nset-cookie: a=b",
  "__proto__",
];

describe("words that want to be more than words", () => {
  const hub = oneHub();

  it.each(WORDS)("stay words in titles, labels, names and ids: %j", async (word) => {
    const { url } = hub;
    const { status } = await ask(url, "/api/sheets", { method: "POST", body: { title: word } });
    expect([201, 422]).toContain(status); // taken as it is, or not at all
    const { sheet, links } = await createSheet(url);
    const [owner, guest] = [
      await enter(url, sheet, links.owner),
      await enter(url, sheet, links.draw),
    ];
    const path = `/api/sheets/${sheet}/links`;
    const made = await ask(url, path, {
      ...{ method: "POST", cookie: owner },
      body: { role: "view", label: word },
    });
    const listed = await fetch(`${url}${path}`, { headers: { cookie: owner } });
    expect(listed.headers.get("content-type")).toBe("application/json; charset=utf-8");
    expect(listed.headers.get("x-content-type-options")).toBe("nosniff");
    expect(listed.headers.get("content-security-policy")).toContain("default-src 'none'");
    const { links: all } = (await listed.json()) as LinksListed;
    if (made.status === 201) expect(all.some(({ label }) => label === word.trim())).toBe(true);

    const [anna, ben] = [
      await openPage({ url, sheet, cookie: owner }),
      await openPage({ url, sheet, cookie: guest }),
    ];
    anna.say({ name: word, hue: 1, panel: word, view: null, pointer: null }, 1);
    anna.draw(word, word);
    await ben.until(() => ben.presence.length > 0 && ben.strokes().length > 0);
    const shown = readPresence(JSON.parse(ben.presence[0]?.state ?? "null"));
    expect(shown?.name).toBe(word.trim());
    expect(ben.strokes()).toEqual([word]);
    expect(({} as Record<string, unknown>).name).toBeUndefined();
    await Promise.all([anna.close(), ben.close()]);
  });

  it.each([
    "/api/sheets/%00",
    "/api/sheets/..%2f..%2fetc",
    "/api/sheets/<script>",
    "/api/%0d%0aset-cookie:a=b",
  ])("open nothing in the path %s", async (path) => {
    const answer = await fetch(`${hub.url}${path}`);
    expect(answer.status).toBe(404);
    expect(answer.headers.get("set-cookie")).toBeNull();
    const text = await answer.text();
    expect(text).not.toContain("<script>");
    expect(JSON.parse(text)).toMatchObject({ code: "not-found" });
  });
});
