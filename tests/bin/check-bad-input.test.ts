import { truncate } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { capturedExample, sheetFileText } from "../../lib/sheet";
import { heelstrip } from "../support/command-line";
import { ownFiles } from "../support/own-files";
import { ids } from "../support/peers";

const files = ownFiles();
const { fileOf } = files;
const EXAMPLE = capturedExample(ids());

describe("bad input", () => {
  const text = sheetFileText(EXAMPLE);
  const cases: readonly (readonly [name: string, content: string, says: RegExp])[] = [
    [
      "cut.json",
      text.slice(0, 4000),
      /cut\.json: expected JSON, got text that is none, or was cut/,
    ],
    ["empty.json", "", /empty\.json: expected JSON, got an empty file/],
    [
      "other.json",
      '{"format":"board","shapes":[]}',
      /expected format "heelstrip-sheet", got format "b/,
    ],
    ["newer.json", text.replace('"version": 1', '"version": 9'), /expected version 1, got 9/],
    [
      "pose.json",
      text.replace('"pose": "up"', '"pose": "hop"'),
      /panels\[3\]\.pose: expected .* got "hop"/,
    ],
  ];
  it.each(cases)("is one line and exit 2: %s", async (name, content, says) => {
    const file = await fileOf(name, content);
    const good = await fileOf("walk.json", EXAMPLE);
    for (const args of [[file], [file, "--json"], [good, file, "--json"]]) {
      const { code, out, err } = await heelstrip("check", ...args);
      expect({ code, out }).toEqual({ code: 2, out: "" });
      expect(err.length).toBe(1);
      expect(err[0]).toMatch(says);
      expect(err[0]).not.toContain("\n");
    }
  });

  it("is not read when it is too large", async () => {
    const file = await fileOf("large.json", "");
    await truncate(file, 4 * 1024 ** 3); // a hole, not bytes; more than Node reads into one
    const { code, err } = await heelstrip("check", file);
    expect(code).toBe(2);
    expect(err).toEqual([`heelstrip: ${file}: expected up to 16.0 MiB, got 4096.0 MiB`]);
  });

  it("has a line for each file", async () => {
    const cut = await fileOf("cut.json", "{");
    const { code, err } = await heelstrip(
      "check",
      cut,
      join(files.folder, "none.json"),
      files.folder,
    );
    expect(code).toBe(2);
    expect(err.map((line) => line.replace(files.folder, "…"))).toEqual([
      expect.stringContaining("cut.json: expected JSON"),
      "heelstrip: …/none.json: expected a file, there is none of this name",
      "heelstrip: …: expected a file, got a folder",
    ]);
  });

  it("says that motion files come later", async () => {
    const file = await fileOf("walk.bvh", "HIERARCHY");
    const { code, err } = await heelstrip("check", file);
    expect(code).toBe(2);
    expect(err[0]).toContain("motion files come later");
  });

  it.each([
    [["check"], /expected a sheet file, got none; usage: heelstrip check FILE/],
    [
      ["check", "a.json", "--yardstick", "eye"],
      /expected --yardstick as one of trade, life, this-walk, version, got "eye"/,
    ],
    [["check", "a.json", "--loud"], /unknown option '--loud'; usage: heelstrip check/],
    [["check", "a.json", "--yardstick"], /usage: heelstrip check/],
    [["chek"], /expected check, print, example or --help, got "chek"/],
    [[], /expected check, print, example or --help, got nothing/],
    [["example"], /usage: heelstrip example \[--name captured-walk\|brindle\] -o SHEET.json/],
    [
      ["example", "--name", "run", "-o", "a.json"],
      /expected --name captured-walk or brindle, got "run"/,
    ],
  ])("says how it is used: %j", async (args, says) => {
    const { code, out, err } = await heelstrip(...args);
    expect({ code, out, lines: err.length }).toEqual({ code: 2, out: "", lines: 1 });
    expect(err[0]).toMatch(says);
  });
});
