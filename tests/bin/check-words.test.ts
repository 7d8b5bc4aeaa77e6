import { describe, expect, it } from "vitest";
import { checkReport } from "../../bin/check-report";
import { checkWords } from "../../bin/check-words";
import { onOneLine, withoutControls } from "../../bin/on-one-line";
import { reviewWalk } from "../../lib/gait";
import { capturedExample, defaultBrief, layOut, type Sheet, walkOf } from "../../lib/sheet";
import { ids } from "../support/peers";

const EXAMPLE = capturedExample(ids());
const checked = (sheet: Sheet) => ({
  file: "walk.json",
  sheet,
  review: reviewWalk(walkOf(sheet), sheet.head.yardstick),
});
const words = (sheet: Sheet) => checkWords(checked(sheet));
const titled = (title: string): Sheet => ({ ...EXAMPLE, head: { ...EXAMPLE.head, title } });

/** The example's poses with some joints alone; `pose` puts its passing in as a stand as well. */
function marked(keep: RegExp, standing = false): Sheet {
  const panels = EXAMPLE.panels.map((panel) => {
    const side = Object.fromEntries(
      Object.entries(panel.marks.side).filter(([joint]) => keep.test(joint)),
    );
    return { ...panel, marks: { side, front: {} } };
  });
  const [passing] = panels.filter(({ pose }) => pose === "passing");
  if (!standing || passing === undefined) return { ...EXAMPLE, panels };
  return { ...EXAMPLE, panels: [{ ...passing, id: "stand", pose: "stand" }, ...panels] };
}

describe("where the leg was measured", () => {
  it.each([
    [marked(/./), "panels", /^ {2}leg length from the poses' hips, knees and ankles: no/m],
    [
      marked(/hip|knee|heel|toe/),
      "heels",
      /^ {2}leg length from the poses' hips, knees and heels: no/m,
    ],
  ] as const)("is said without a stand", (sheet, from, says) => {
    expect(words(sheet)).toMatch(says);
    expect(checkReport(checked(sheet)).legLengthFrom).toBe(from);
  });

  it("is the stand where one is marked, which needs no word, and nothing without marks", () => {
    const standing = marked(/./, true);
    expect(words(standing)).not.toContain("leg length from");
    expect(checkReport(checked(standing)).legLengthFrom).toBe("stand");
    const bare = layOut(defaultBrief, ids());
    expect(words(bare)).not.toContain("leg length from");
    expect(checkReport(checked(bare)).legLengthFrom).toBeNull();
  });
});

describe("what cannot be told", () => {
  /** Two strides, of which nothing is marked: each side has two steps that need the same. */
  const strip = layOut(defaultBrief, ids());
  const later = strip.panels.slice(1).map((panel) => ({
    ...panel,
    id: `later${panel.id}`,
    frame: panel.frame + 24,
  }));
  const twoStrides: Sheet = { ...strip, panels: [...strip.panels, ...later] };

  it("is said once for each side", () => {
    const { review } = checked(twoStrides);
    const told = checkReport(checked(twoStrides)).cannotTell.map((one) => JSON.stringify(one));
    expect(review.cannotTell.length).toBeGreaterThan(told.length);
    expect(new Set(told).size).toBe(told.length);
    const sides = checkReport(checked(twoStrides)).cannotTell.map(({ side }) => side);
    expect(new Set(sides)).toEqual(new Set(["left", "right", null]));
    const lines = words(twoStrides)
      .split("\n")
      .filter((line) => line.includes("cannot tell"));
    expect(new Set(lines).size).toBe(lines.length);
    expect(lines).toHaveLength(told.length);
  });
});

describe("the words of a check", () => {
  it("count one panel and one step as one", () => {
    const one = { ...EXAMPLE, panels: EXAMPLE.panels.slice(0, 1) };
    expect(words(one)).toContain("· 1 panel · 0 steps");
    const step = { ...EXAMPLE, panels: EXAMPLE.panels.slice(0, 2) };
    expect(words(step)).toContain("· 2 panels · 1 step\n");
  });

  it("have no minus before nothing", () => {
    const { file, sheet, review } = checked(EXAMPLE);
    const stepReadings = review.stepReadings.map((step) => ({
      ...step,
      length: { kind: "value", value: -0.001, plusMinus: 0, unit: "leg" } as const,
    }));
    const said = checkWords({ file, sheet, review: { ...review, stepReadings } });
    expect(said).toMatch(/ 0\.00 /);
    expect(said).not.toContain("-0.00");
  });

  it("keep a title on one line and write out what would steer a terminal", () => {
    const [first] = words(titled("Up\r\n  and \u001b]0;off\u0007 \u009b2J away\u2028now")).split(
      "\n",
    );
    expect(first).toBe("walk.json: Up and \\u001b]0;off\\u0007 \\u009b2J away now");
  });

  it("leave other writing alone", () => {
    expect(onOneLine("Schrittfolge – ходьба 歩く 🚶")).toBe("Schrittfolge – ходьба 歩く 🚶");
  });

  it("leave JSON the same JSON", () => {
    const json = JSON.stringify({ title: "a\u009b\u007f\u001b\nb" }, null, 2);
    expect(withoutControls(json)).not.toMatch(/[\u007f-\u009f]/);
    expect(JSON.parse(withoutControls(json))).toEqual(JSON.parse(json));
  });
});
