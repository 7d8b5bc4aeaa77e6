import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, expect, it } from "vitest";
import { BOARD_AT_MOST_KB, weigh } from "../../scripts/house/weight.mjs";
import { dice } from "../support/dice";

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

/** A build whose board is this many kB of scripts that cannot be pressed, beside a lighter page. */
function builtWith(kB: number): string {
  const folder = mkdtempSync(join(tmpdir(), "weight-"));
  folders.push(folder);
  const throws = dice(24);
  const put = (path: string, content: string | Uint8Array) => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  };
  put(
    "static/board.js",
    Uint8Array.from({ length: kB * 1000 }, () => throws.below(256)),
  );
  put("static/shut.js", "shut()");
  put(
    "static/board.css",
    Uint8Array.from({ length: 9000 }, () => throws.below(256)),
  );
  const manifest = {
    1: { files: ["static/shut.js"] },
    2: { files: ["static/board.js", "static/shut.js", "static/board.css"] },
  };
  put("server/app/sheet/[sheetId]/page/react-loadable-manifest.json", JSON.stringify(manifest));
  return folder;
}

it("lets a board through that is as heavy as it may be, and counts no styles", () => {
  expect(weigh(builtWith(BOARD_AT_MOST_KB - 1))).toMatchObject({ passes: true });
});

it("stops one that is heavier, and says by how much it weighs", () => {
  const { passes, told } = weigh(builtWith(BOARD_AT_MOST_KB + 1));
  expect(passes).toBe(false);
  const [heavier, most] = [BOARD_AT_MOST_KB + 1, BOARD_AT_MOST_KB];
  expect(told).toMatch(
    new RegExp(`^the board's own scripts: ${heavier}\\.\\d kB gzip, at most ${most}$`),
  );
});

it("takes a build that names no board for an error, not for one that weighs nothing", () => {
  const folder = builtWith(1);
  writeFileSync(join(folder, "server/app/sheet/[sheetId]/page/react-loadable-manifest.json"), "{}");
  expect(() => weigh(folder)).toThrow("names no scripts of the board");
});
