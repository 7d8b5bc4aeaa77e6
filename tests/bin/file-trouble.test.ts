import { execFile } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { main } from "../../bin/cli";
import { capturedExample, sheetFileText } from "../../lib/sheet";
import { ids } from "../support/peers";

let folder = "";
let walk = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "heelstrip-trouble-"));
  walk = join(folder, "walk.json");
  await writeFile(walk, sheetFileText(capturedExample(ids())));
});
afterAll(async () => {
  await rm(folder, { recursive: true });
});

async function heelstrip(...args: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const code = await main(args, { out: (line) => out.push(line), err: (line) => err.push(line) });
  return { code, out, err };
}

describe("a file that cannot be reached", () => {
  const places: readonly (readonly [what: string, file: () => string, says: RegExp])[] = [
    ["below another file", () => join(walk, "x"), /x: expected a file in a folder, part of this/],
    ["of too long a name", () => join(folder, "n".repeat(300)), /no file can have so long a name/],
    ["of no such name", () => join(folder, "none"), /expected a file, there is none of this name/],
  ];
  it.each(places)("is one line and exit 2: %s", async (_what, file, says) => {
    for (const args of [
      ["check", file()],
      ["print", file(), "-o", join(folder, "a.svg")],
    ]) {
      const { code, out, err } = await heelstrip(...args);
      expect({ code, out, lines: err.length }).toEqual({ code: 2, out: [], lines: 1 });
      expect(err[0]).toMatch(says);
    }
  });
});

describe("a fault of its own", () => {
  const start = fileURLToPath(new URL("../../bin/heelstrip.mjs", import.meta.url));
  const run = (breaking: string) =>
    promisify(execFile)(
      process.execPath,
      ["--import", `data:text/javascript,${encodeURIComponent(breaking)}`, start, "check", walk],
      { env: { ...process.env, HEELSTRIP_FROM_SOURCE: "1" } },
    );

  it.each([
    ["thrown", "process.stdout.write = () => { throw new Error('no room\\nat all'); };"],
    [
      "told later",
      "process.stdout.write = () => { setImmediate(() => { throw new Error('no room\\nat all'); }); };",
    ],
  ])(
    "is one line and exit 70, never the 1 of a walk where something shows: %s",
    async (_when, breaking) => {
      await expect(run(breaking)).rejects.toMatchObject({
        code: 70,
        stderr: "heelstrip: a fault of its own: Error: no room\n",
      });
    },
    30_000,
  );
});
