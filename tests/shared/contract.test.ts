import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { KINDS, type Travel } from "../../lib/gait";
import { defaultBrief, type Brief as LibBrief, MAX_SHEET_FILE_BYTES } from "../../lib/sheet";
import { readCreateSheet } from "../../shared/api";
import { Brief } from "../../shared/brief";
import {
  BRIEF_DEFAULTS,
  BRIEF_KINDS,
  BRIEF_TRAVELS,
  leastFramesPerStep,
} from "../../shared/brief-defaults";
import { CLOSE, isFinal } from "../../shared/close-code";
import { DOCUMENTS, isDocumentName } from "../../shared/document-name";
import { complaint } from "../../shared/expecting";
import { REFUSALS, STORAGE_STATES } from "../../shared/hub-message";
import { SHEET_FILE_BYTES } from "../../shared/limits";
import { readPresence } from "../../shared/presence";
import { MESSAGE } from "../../shared/protocol";
import { mayWrite, ROLES } from "../../shared/role";
import { readSheetId } from "../../shared/sheet-id";

describe("the brief", () => {
  it("takes every default where nothing is said", () => {
    expect(Brief.parse({})).toEqual(BRIEF_DEFAULTS);
  });

  it("is what the library lays out", () => {
    const brief: LibBrief = Brief.parse({ kind: "sneak", travel: "travelling" });
    expect(brief).toEqual({ ...defaultBrief, kind: "sneak", travel: "travelling" });
    expect(BRIEF_KINDS).toEqual(KINDS);
    const travels: readonly Travel[] = BRIEF_TRAVELS;
    expect(travels).toHaveLength(2);
  });

  it("takes one number of frames for both sides", () => {
    expect(Brief.parse({ framesPerStep: 8 }).framesPerStep).toEqual({ left: 8, right: 8 });
  });

  it("takes the fewest frames that leave each pose a drawn one", () => {
    expect(Brief.parse({ exposure: 2, framesPerStep: 8 }).framesPerStep.left).toBe(8);
    expect(Brief.parse({ exposure: 1, framesPerStep: 4 }).framesPerStep.left).toBe(4);
    expect([leastFramesPerStep(1), leastFramesPerStep(2)]).toEqual([4, 8]);
  });

  it("takes a part of the build and fills in the rest", () => {
    expect(Brief.parse({ build: { legShare: 0.4 } }).build).toEqual({
      headsTall: 7.5,
      legShare: 0.4,
      statureMetres: null,
    });
  });

  const wrong: readonly (readonly [unknown, string | RegExp])[] = [
    [
      { framesPerStep: { left: 12.5, right: 12 } },
      /framesPerStep needs a whole number in 4\.\.240/,
    ],
    [
      { exposure: 2, framesPerStep: { left: 8, right: 6 } },
      "framesPerStep.right needs at least 8 on twos, a drawn frame for each of its four poses, got 6",
    ],
    [{ exposure: 2, framesPerStep: 7 }, /framesPerStep\.left needs at least 8 on twos.* got 7$/],
    [{ stepLength: Number.NaN }, /stepLength needs a number in 0\.05\.\.2\.5/],
    [{ title: "two\nlines" }, /title needs 1 to 120 characters on one line/],
    [{ exposure: 3 }, "exposure needs one of 1, 2, got 3"],
    [{ leadIn: "yes" }, 'leadIn needs true or false, got "yes"'],
    [{ build: { heads: 7 } }, "build has no field heads"],
    [{ build: 7 }, /build needs an object/],
    ["walk", /the request needs an object/],
  ];
  it.each(wrong)("says of %j what was expected", (body, says) => {
    expect(() => readCreateSheet(body)).toThrow();
    const { error } = Brief.safeParse(body);
    expect(error === undefined ? "" : complaint(error)).toMatch(says);
  });
});

describe("a sheet file", () => {
  it("may be as large as the library reads", () => {
    expect(SHEET_FILE_BYTES).toBe(MAX_SHEET_FILE_BYTES);
  });
});

describe("presence", () => {
  const anna = { name: " Anna ", hue: 210, panel: null, view: "side", pointer: [10.5, -3] };

  it("is shown where it parses", () => {
    expect(readPresence(anna)).toEqual({ ...anna, name: "Anna" });
  });

  it.each([
    null,
    "Anna",
    { ...anna, name: "" },
    { ...anna, name: "x".repeat(41) },
    { ...anna, hue: 360 },
    { ...anna, hue: 1.5 },
    { ...anna, view: "top" },
    { ...anna, pointer: [Number.POSITIVE_INFINITY, 0] },
    { ...anna, pointer: [1] },
  ])("is not shown where it does not: %j", (state) => {
    expect(readPresence(state)).toBeNull();
  });
});

describe("who may write", () => {
  it("is open or shut a document at a time", () => {
    const table = ROLES.map((role) => DOCUMENTS.map((name) => mayWrite(role, name)));
    expect(table).toEqual([
      [true, true],
      [true, true],
      [false, true],
      [false, false],
    ]);
  });
});

describe("names that come from outside", () => {
  it("are taken in their own shape alone", () => {
    expect(readSheetId("Q9e27H8oM7BM")).toBe("Q9e27H8oM7BM");
    for (const wrong of ["", "short", "Q9e27H8oM7BM1", "Q9e27H8oM7B/", 7, null]) {
      expect(readSheetId(wrong)).toBeNull();
    }
    expect(isDocumentName("drawing")).toBe(true);
    expect(isDocumentName("toString")).toBe(false);
  });
});

describe("PROTOCOL.md", () => {
  const text = readFileSync(new URL("../../shared/PROTOCOL.md", import.meta.url), "utf8");

  it("has a row for every type, refusal, state and close code", () => {
    for (const type of Object.values(MESSAGE)) expect(text).toMatch(new RegExp(`\\b${type}\\b`));
    for (const code of REFUSALS) expect(text).toMatch(new RegExp(`\\| \`${code}\` +\\|`));
    for (const state of STORAGE_STATES) expect(text).toContain(`\`${state}\``);
    for (const code of Object.values(CLOSE)) expect(text).toMatch(new RegExp(`\\| ${code} \\|`));
  });

  it("calls final what y-websocket's client takes for final", () => {
    const final = Object.values(CLOSE).filter(isFinal);
    const { badFrames, revoked, gone, clientTaken, otherGeneration, shutOut, newerVersion } = CLOSE;
    const told = [badFrames, revoked, gone, clientTaken, otherGeneration, shutOut, newerVersion];
    expect(final).toEqual(told);
  });
});
