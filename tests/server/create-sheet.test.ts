import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { readCritique, readSheet, sheetFileText } from "../../lib/sheet";
import { HUB_LIMITS, SHEET_FILE_BYTES } from "../../shared/limits";
import { openPage } from "../support/hub-client";
import { ask, createSheet, enter, startTestHub, temporaryFolder } from "../support/hub-under-test";
import { oneHub } from "../support/one-hub";

describe("POST /api/sheets", () => {
  const hub = oneHub();
  let url: string;

  beforeAll(async () => {
    ({ url } = hub);
  });

  /** The sheet as a page reads it. */
  async function made(body: unknown) {
    const { sheet, links } = await createSheet(url, body);
    const cookie = await enter(url, sheet, links.owner);
    const page = await openPage({ url, sheet, cookie });
    await page.close();
    return readSheet(page.doc);
  }

  it("lays out the strip of the brief's defaults", async () => {
    const sheet = await made({});
    expect(sheet.panels.map(({ frame }) => frame)).toEqual([1, 4, 7, 10, 13, 16, 19, 22, 25]);
    expect(sheet.head).toMatchObject({ framesPerSecond: 24, exposure: 1, stepLength: 0.78 });
  });

  it("lays out what the brief says, each side its own", async () => {
    const sheet = await made({
      title: " Limp ",
      kind: "limp",
      framesPerStep: { left: 16, right: 8 },
    });
    expect(sheet.head).toMatchObject({ title: "Limp", framesPerStep: { left: 16, right: 8 } });
  });

  it("starts from the captured example", async () => {
    const sheet = await made({ from: "example", example: "captured-walk" });
    expect(sheet.panels.length).toBeGreaterThan(0);
    expect(sheet.head.credit).not.toBe("");
  });

  it("starts from the demo, each time as a copy of its own", async () => {
    const [one, other] = [await made(DEMO), await made(DEMO)];
    expect(one.panels).toHaveLength(11);
    expect(one.panels.every(({ ink }) => ink.side.length > 0 && ink.front.length > 0)).toBe(true);
    const taken = new Set(one.panels.map(({ id }) => id));
    expect(other.panels.filter(({ id }) => taken.has(id))).toEqual([]);
    expect(other.head).toEqual(one.head);
  });

  it("puts what a sheet file keeps on purpose into the critique, where it can be dropped", async () => {
    const kept = {
      id: "aaaaaaaa",
      check: "slide",
      scope: { kind: "walk" },
      reason: "wet planks",
      measured: { value: 0.08, plusMinus: 0.01, unit: "leg" },
      by: "Ana",
    } as const;
    const file = sheetFileText({ ...(await made({})), onPurpose: [kept] });
    const { sheet, links } = await createSheet(url, { from: "file", file });
    const cookie = await enter(url, sheet, links.view);
    const page = await openPage({ url, sheet, cookie, document: "critique" });
    await page.close();
    expect(readCritique(page.doc).onPurpose).toEqual([kept]);
  });

  const DEMO = { from: "example", example: "brindle" } as const;

  const bad = [
    { what: "an unknown field", body: { frames: 3 }, says: "the request has no field frames" },
    {
      what: "a number out of range",
      body: { framesPerStep: 1 },
      says: /framesPerStep needs .*4\.\.240/,
    },
    { what: "an unknown kind", body: { kind: "moonwalk" }, says: /kind needs one of plain, heavy/ },
    { what: "a list", body: [], says: /the request needs an object/ },
    {
      what: "an unknown example",
      body: { from: "example", example: "run" },
      says: /captured-walk/,
    },
    { what: "no file", body: { from: "file" }, says: /file needs a sheet file/ },
    {
      what: "a file that is no sheet",
      body: { from: "file", file: { format: "other" } },
      says: /./,
    },
    { what: "a file cut short", body: { from: "file", file: '{"format":"heelstrip-' }, says: /./ },
  ];
  it.each(bad)("refuses $what with one line", async ({ body, says }) => {
    const { status, body: answer } = await ask(url, "/api/sheets", { method: "POST", body });
    expect(status).toBe(422);
    const { message } = answer as { message: string };
    expect(message).toMatch(says);
    expect(message).not.toContain("\n");
  });

  it("refuses what is not JSON", async () => {
    const { status, body } = await ask(url, "/api/sheets", { method: "POST", body: "{" });
    expect(status).toBe(400);
    expect(body).toMatchObject({ code: "not-json" });
  });

  it("refuses a request that is too large, and says how large it may be", async () => {
    const file = "x".repeat(HUB_LIMITS.requestBytes);
    const { status, body } = await ask(url, "/api/sheets", {
      method: "POST",
      body: { from: "file", file },
    });
    expect(status).toBe(413);
    expect(body).toEqual({ code: "too-large", message: "a request has at most 33 MiB" });
  });

  it("takes a file that is just as large as one may be, whatever JSON makes of it", async () => {
    const file = sheetFileText(await made({})).padEnd(SHEET_FILE_BYTES, "\n");
    expect((await made({ from: "file", file })).panels).toHaveLength(9);
    const { status, body } = await ask(url, "/api/sheets", {
      method: "POST",
      body: { from: "file", file: `${file}\n` },
    });
    expect(status).toBe(422);
    expect(body).toMatchObject({ code: "too-large" });
  });

  it("keeps secrets and cookies only as their hashes", async () => {
    const { sheet, links } = await createSheet(url);
    const cookie = await enter(url, sheet, links.draw);
    const device = cookie.split("=")[1] ?? "";
    const files = ["heelstrip.db", "heelstrip.db-wal"];
    const kept = Buffer.concat(files.map((name) => readFileSync(join(hub.folder, name))));
    expect(kept.includes(sheet)).toBe(true); // so the search would have found them
    for (const secret of [...Object.values(links), device]) {
      expect(kept.includes(secret)).toBe(false);
      expect(kept.includes(Buffer.from(secret, "base64url"))).toBe(false);
    }
  });

  it("gives a cookie that scripts cannot read and foreign pages cannot send", async () => {
    const { sheet, links } = await createSheet(url);
    const response = await fetch(`${url}/api/enter`, {
      method: "POST",
      body: JSON.stringify({ sheet, secret: links.view }),
    });
    const cookie = response.headers.get("set-cookie") ?? "";
    expect(cookie).toMatch(/; HttpOnly; SameSite=Lax$/);
    expect(cookie).toContain("; Path=/;");
  });

  it("marks the cookie as secure where people come over TLS", async () => {
    const other = temporaryFolder();
    const secured = await startTestHub(other.path, { publicUrl: new URL("https://walks.example") });
    const { sheet, links } = await createSheet(secured.url);
    const response = await fetch(`${secured.url}/api/enter`, {
      method: "POST",
      headers: { origin: "https://walks.example" },
      body: JSON.stringify({ sheet, secret: links.view }),
    });
    expect(response.headers.get("set-cookie")).toMatch(/; Secure$/);
    await secured.stop();
    other.remove();
  });
});
