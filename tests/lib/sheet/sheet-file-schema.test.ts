import { describe, expect, it } from "vitest";
import { JOINTS } from "../../../lib/body";
import { CHECK_IDS, SUBJECTS, UNITS } from "../../../lib/gait";
import { defaultBrief, layOut, readSheetFile, sheetFileText } from "../../../lib/sheet";
import { ids } from "../../support/peers";
import { DAMAGES, damaged, SOME_INK } from "./inked-file";
import { schema, validate } from "./published-schema";

describe("the published schema", () => {
  it("agrees with the reader that our files are sheets", () => {
    for (const sheet of [SOME_INK, layOut({ ...defaultBrief, leadIn: true }, ids())]) {
      expect(validate(JSON.parse(sheetFileText(sheet))), JSON.stringify(validate.errors)).toBe(
        true,
      );
    }
  });

  it.each(DAMAGES)("agrees with the reader about %s ← %j", (path, value) => {
    expect(validate(damaged(path, value))).toBe(false);
  });

  it("agrees about values at the edge", () => {
    for (const [path, value] of [
      ["head.title", "🚶".repeat(200)],
      ["head.build.statureMetres", 1.7],
      ["head.stepLength", 10],
      ["panels.3.frame", 100_000],
      ["panels.3.place", null],
      ["panels.3.marks.side.load", [131_071, -131_071, 0]],
      ["panels.3.ink.side.0.width", 1 / 16],
      ["panels.3.ink.side.0.points.1", [0, 0, 1]],
      ["panels", []],
    ] as const) {
      const file = damaged(path, value);
      expect(validate(file), path).toBe(true);
      expect(() => readSheetFile(JSON.stringify(file)), path).not.toThrow();
    }
  });

  it("knows the checks there are, and the units", () => {
    const { check, subject, measured } = schema.$defs.onPurpose.properties;
    expect(check.enum).toEqual(CHECK_IDS);
    expect(subject.enum).toEqual(SUBJECTS);
    expect(measured.properties.unit.enum).toEqual(UNITS);
  });

  it("knows the joints there are", () => {
    expect(Object.keys(schema.$defs.viewMarks.properties).sort()).toEqual([...JOINTS].sort());
  });
});
