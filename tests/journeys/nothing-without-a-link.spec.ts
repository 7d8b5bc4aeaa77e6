import { readdirSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { openPage } from "../support/hub-client";
import { createSheet, enter } from "../support/hub-under-test";
import { expect, ownBoard, test } from "../support/journey";

const board = ownBoard();
const BUILT = fileURLToPath(new URL("../../.next/static", import.meta.url));
const TITLE = "Mirabel crosses the yard";

/** Everything that is handed out as it lies there, as addresses. */
function staticAddresses(): readonly string[] {
  return readdirSync(BUILT, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => relative(BUILT, join(parentPath, name)).split(sep).join("/"))
    .map((file) => `/_next/static/${file}`);
}

/** What somebody without a link might ask for, in the hope that it is there. */
const guesses = (sheet: string) => [
  ...["/heelstrip.db", "/data/heelstrip.db", "/heelstrip.db-wal", "/../data/heelstrip.db"],
  ...["/_next/static/..%2f..%2fdist%2fserver.mjs", "/_next/static/../../package.json"],
  ...["/package.json", "/.next/BUILD_ID", "/dist/server.mjs", "/metrics", "/readyz", "/livez"],
  ...["/api/sheets", "/api/audit", `/api/sheets/${sheet}`, `/api/sheets/${sheet}/links`],
  ...[
    `/api/sheets/${sheet}/audit`,
    `/api/sheets/${sheet}/pictures/AAAA`,
    `/_next/data/x/sheet/${sheet}.json`,
  ],
  ...[`/sync/${sheet}/drawing`, `/sync/${sheet}/critique`],
];

test("nothing of a sheet is read without a link, and every answer carries its guard", async () => {
  const { sheet, links } = await createSheet(board.url, { title: TITLE });
  const cookie = await enter(board.url, sheet, links.owner);
  const drawn = await openPage({ url: board.url, sheet, cookie });
  const [panel = ""] = [...drawn.doc.getMap("panels").keys()];
  await drawn.close();
  const secrets = [TITLE, panel, ...Object.values(links), cookie.split("=")[1] ?? ""];
  expect(secrets.every((secret) => secret.length >= 8)).toBe(true);

  const pages = ["/", "/methods", `/sheet/${sheet}`, "/nowhere", "/sheet/short"];
  const files = staticAddresses();
  expect(files.length).toBeGreaterThan(20);
  for (const address of [...pages, ...files, ...guesses(sheet)]) {
    const answer = await fetch(`${board.url}${address}`);
    const said = Buffer.from(await answer.arrayBuffer()).toString("latin1");
    for (const secret of secrets) expect(said, address).not.toContain(secret);
    expect(answer.headers.get("set-cookie"), address).toBeNull();
    expect(answer.headers.get("x-content-type-options"), address).toBe("nosniff");
    expect(answer.headers.get("x-frame-options"), address).toBe("DENY");
    expect(answer.headers.get("referrer-policy"), address).toBe("same-origin");
    expect(answer.headers.get("access-control-allow-origin"), address).toBeNull();
    expect(answer.headers.get("content-security-policy"), address).toMatch(
      /frame-ancestors 'none'/,
    );
    if (files.includes(address)) expect(answer.status, address).toBe(200);
    else if (guesses(sheet).includes(address))
      expect(answer.status, address).toBeGreaterThanOrEqual(400);
  }
  const strange = await fetch(`${board.url}/api/sheets/${sheet}`);
  const none = await fetch(`${board.url}/api/sheets/AAAAAAAAAAAA`);
  expect([strange.status, await strange.text()]).toEqual([none.status, await none.text()]);
  await expect(openPage({ url: board.url, sheet })).rejects.toThrow("status 404");
});
