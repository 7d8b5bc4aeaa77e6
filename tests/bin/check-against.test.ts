import { describe, expect, it } from "vitest";
import { capturedExample, type Sheet } from "../../lib/sheet";
import { heelstrip } from "../support/command-line";
import { ownFiles } from "../support/own-files";
import { ids } from "../support/peers";

const { fileOf } = ownFiles();
const EXAMPLE = capturedExample(ids());

/** The example with the hips of its left down a tenth of a leg lower, in both views. */
const SUNK: Sheet = {
  ...EXAMPLE,
  panels: EXAMPLE.panels.map((panel) => {
    if (panel.pose !== "down" || panel.weightOn !== "left") return panel;
    const sunk = (marks: typeof panel.marks.side) =>
      Object.fromEntries(
        Object.entries(marks).map(([joint, mark]) => [
          joint,
          joint.endsWith("-hip") ? { ...mark, y: mark.y + 42 } : mark,
        ]),
      );
    return { ...panel, marks: { side: sunk(panel.marks.side), front: sunk(panel.marks.front) } };
  }),
};

const against = (file: string, other: string, ...more: string[]) =>
  heelstrip("check", file, "--yardstick", "version", "--against", other, ...more);

describe("heelstrip check --against", () => {
  it("has nothing to say of a walk held against itself", async () => {
    const file = await fileOf("walk.json", EXAMPLE);
    const { code, err, out } = await against(file, file, "--json");
    const report = JSON.parse(out);
    expect({ code, err, yardstick: report.yardstick }).toEqual({
      code: 0,
      err: [],
      yardstick: "version",
    });
    const byStep = report.remarks.filter(({ why }: { why: string }) => /it goes by/.test(why));
    expect(byStep).toEqual([]);
  });

  it("tells where it breaks the other walk's step, of the same side, and exits 1", async () => {
    const [walk, sunk] = [await fileOf("walk.json", EXAMPLE), await fileOf("sunk.json", SUNK)];
    const { code, out } = await against(sunk, walk, "--json");
    expect(code).toBe(1);
    const { remarks } = JSON.parse(out);
    expect(remarks).toContainEqual(
      expect.objectContaining({
        check: "hip-order",
        level: "shows",
        side: "left",
        frames: [1, 3],
        why: expect.stringMatching(/In the left step of the walk it goes by, which it goes by/),
      }),
    );
    const breaks = remarks.filter(
      ({ check, side }: { check: string; side: string }) =>
        check === "hip-order" && side === "right",
    );
    expect(breaks).toEqual([]);
  });

  it("goes the other way round as well: the other file is the rule", async () => {
    const [walk, sunk] = [await fileOf("walk.json", EXAMPLE), await fileOf("sunk.json", SUNK)];
    const report = JSON.parse((await against(walk, sunk, "--json")).out);
    expect(report.file).toBe(walk);
    const [told] = report.remarks.filter(({ check }: { check: string }) => check === "hip-order");
    expect(told.measured.value).toBeGreaterThan(told.expected.value);
  });

  it.each([
    ["--yardstick", "version"],
    ["--against", "other.json"],
    ["--yardstick", "trade", "--against", "other.json"],
  ])("is asked for together with its yardstick, or not at all: %s %s", async (...args) => {
    const file = await fileOf("walk.json", EXAMPLE);
    const { code, out, err } = await heelstrip("check", file, ...args.filter(Boolean));
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err[0]).toContain("expected --yardstick version and --against OTHER.json together");
  });

  it("says in one line what is wrong with the other file", async () => {
    const [walk, cut] = [await fileOf("walk.json", EXAMPLE), await fileOf("cut.json", "{")];
    const { code, out, err } = await against(walk, cut);
    expect({ code, out, lines: err.length }).toEqual({ code: 2, out: "", lines: 1 });
    expect(err[0]).toMatch(/cut\.json: expected JSON/);
  });
});
