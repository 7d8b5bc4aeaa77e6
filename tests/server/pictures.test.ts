import { createHash } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { RunningHub } from "../../server/start-hub";
import type { PictureStored } from "../../shared/api-answers";
import { PICTURE_LIMITS } from "../../shared/limits";
import { ROLES } from "../../shared/role";
import {
  ask,
  createSheet,
  enter,
  revokedDevice,
  sheetWithPeople,
  startTestHub,
  temporaryFolder,
} from "../support/hub-under-test";
import { halvesPng, pngOf } from "../support/png";

const PEOPLE = [...ROLES, "stranger", "neighbour", "revoked"] as const;
type Who = (typeof PEOPLE)[number];

const PICTURE = halvesPng(40, 60);
const NAME = createHash("sha256").update(PICTURE).digest("base64url");
const NOBODYS = "A".repeat(43);
const SHEET_BYTES = 2_000_000; // so that a sheet is full before the test is old

describe("pictures at the doors", () => {
  const folder = temporaryFolder();
  let running: RunningHub;
  let url: string;
  let sheet: string;
  let cookies: Record<Who, string | undefined>;

  beforeAll(async () => {
    running = await startTestHub(folder.path, {
      // The real store, with less room a sheet.
      wrapStore: (store) => ({
        ...store,
        putBlob: (blob) => store.putBlob({ ...blob, sheetBytes: SHEET_BYTES }),
      }),
    });
    ({ url } = running);
    const people = await sheetWithPeople(url);
    ({ sheet } = people);
    const neighbour = (await sheetWithPeople(url)).cookies.owner;
    const revoked = await revokedDevice(url, sheet, people.cookies.owner);
    cookies = { ...people.cookies, stranger: undefined, neighbour, revoked };
    await put(PICTURE, people.cookies.owner);
  });
  afterAll(async () => {
    await running.stop();
    folder.remove();
  });

  const put = (body: Uint8Array, cookie?: string, of = sheet, more: object = {}) =>
    ask(url, `/api/sheets/${of}/pictures`, { method: "POST", cookie, body, ...more });
  const get = (picture: string, cookie?: string, of = sheet) =>
    fetch(`${url}/api/sheets/${of}/pictures/${picture}`, {
      headers: cookie === undefined ? {} : { cookie },
    });

  it.each(PEOPLE)("takes one from %s if they may draw", async (who) => {
    const body = pngOf(3, 3, () => [PEOPLE.indexOf(who), 1, 1, 255]);
    const { status, body: answer } = await put(body, cookies[who]);
    const expected = who === "owner" || who === "draw" ? 201 : isRole(who) ? 403 : 404;
    expect(status).toBe(expected);
    if (status === 201) return;
    expect(answer).toEqual({ code: expect.any(String), message: expect.any(String) });
    const name = createHash("sha256").update(body).digest("base64url");
    expect((await get(name, cookies.owner)).status).toBe(404); // nothing was kept of it
  });

  it.each(PEOPLE)("shows one to %s if they may see the sheet", async (who) => {
    const answer = await get(NAME, cookies[who]);
    if (!isRole(who)) {
      const nowhere = await get(NAME, cookies[who], "AAAAAAAAAAAA");
      expect(answer.status).toBe(404);
      expect(await answer.text()).toBe(await nowhere.text());
      return;
    }
    expect(answer.status).toBe(200);
    expect(new Uint8Array(await answer.arrayBuffer())).toEqual(new Uint8Array(PICTURE));
    const header = (name: string) => answer.headers.get(name);
    expect(header("content-type")).toBe("image/png");
    expect(header("x-content-type-options")).toBe("nosniff");
    expect(header("content-security-policy")).toBe("default-src 'none'; sandbox");
    expect(header("cache-control")).toBe("private, max-age=31536000, immutable");
    expect(header("cross-origin-resource-policy")).toBe("same-origin");
  });

  it("says the same of a picture that there is not and of another sheet's", async () => {
    const own = await createSheet(url);
    const cookie = await enter(url, own.sheet, own.links.owner);
    const said = await Promise.all(
      [
        await get(NOBODYS, cookies.view),
        await get(NAME, cookie, own.sheet),
        await get("..%2Flinks", cookies.view),
        await get(NAME, undefined),
      ].map(async (answer) => [answer.status, await answer.text()]),
    );
    expect(said[0]?.[0]).toBe(404);
    expect(new Set(said.map(String)).size).toBe(1);
  });

  it("keeps the same picture once, under a name that is its content", async () => {
    for (const who of ["owner", "draw"] as const) {
      const { status, body } = await put(PICTURE, cookies[who]);
      expect(status).toBe(201);
      expect((body as PictureStored).picture).toBe(NAME);
    }
  });

  it("refuses what another site's page sends", async () => {
    const body = halvesPng(5, 5);
    const refused = await put(body, cookies.owner, sheet, { origin: "https://elsewhere.example" });
    expect(refused).toMatchObject({ status: 403, body: { code: "foreign-origin" } });
    const name = createHash("sha256").update(body).digest("base64url");
    expect((await get(name, cookies.owner)).status).toBe(404);
  });

  it("refuses what is no picture, is too large or too wide, and says what it expected", async () => {
    const text = new TextEncoder();
    const tries = [
      [text.encode("<svg onload='alert(1)'/>"), 415, "image/png, image/jpeg, image/webp"],
      [text.encode("GIF89a\u0010\u0000\u0010\u0000, it says"), 415, "needs to be one of"],
      [new Uint8Array(), 415, "needs to be one of"],
      [PICTURE.subarray(0, 20), 415, "needs to be one of"],
      [halvesPng(PICTURE_LIMITS.side + 1, 2), 422, "at most 2048 a side, got 2049 by 2"],
      [halvesPng(2, PICTURE_LIMITS.side + 1), 422, "at most 2048 a side, got 2 by 2049"],
      [new Uint8Array(PICTURE_LIMITS.bytes + 1), 413, "at most 2 MiB"],
    ] as const;
    for (const [body, status, message] of tries) {
      const refused = await put(body, cookies.draw);
      expect(refused.status).toBe(status);
      expect((refused.body as { message: string }).message).toContain(message);
    }
  });

  it("takes one of the largest size that is allowed", async () => {
    const largest = Buffer.alloc(PICTURE_LIMITS.bytes);
    largest.set(halvesPng(PICTURE_LIMITS.side, 2));
    const own = await createSheet(url);
    const cookie = await enter(url, own.sheet, own.links.owner);
    // More than this hub's sheets may have, and nothing else is wrong with it.
    expect(await put(largest, cookie, own.sheet)).toMatchObject({
      status: 409,
      body: { code: "sheet-full" },
    });
    const smaller = largest.subarray(0, SHEET_BYTES);
    const { status, body } = await put(smaller, cookie, own.sheet);
    expect(status).toBe(201);
    const back = await get((body as PictureStored).picture, cookie, own.sheet);
    expect(smaller.equals(Buffer.from(await back.arrayBuffer()))).toBe(true);
    // The sheet is full now, and what it has stays.
    expect((await put(PICTURE, cookie, own.sheet)).status).toBe(409);
    expect((await put(smaller, cookie, own.sheet)).status).toBe(201);
  });

  it("says which methods its doors take", async () => {
    const how = { method: "DELETE", cookie: cookies.owner };
    const { status, body } = await ask(url, `/api/sheets/${sheet}/pictures/${NAME}`, how);
    expect(status).toBe(405);
    expect(body).toMatchObject({ message: "this door takes GET" });
  });
});

function isRole(who: Who): boolean {
  return ROLES.some((role) => role === who);
}
