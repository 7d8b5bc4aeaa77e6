import { describe, expect, it } from "vitest";
import { layOutPages, remarksOn } from "../../../lib/export";
import type { Sheet } from "../../../lib/sheet";
import { drawnSheet, reviewOf, slipped, sunk } from "./drawn-sheet";
import { DATE, printed, wishFor } from "./printed";
import { overlaps, sizeOf, textBoxes } from "./svg-boxes";

/** The one page of a sheet without paper. */
const print = (sheet: Sheet): string => printed(sheet).join();
const wordsOf = (svg: string) => textBoxes(svg).map(({ text }) => text);

/** Slips and sinks in every stride, so that there is much to say. */
const faulty = (count: number): Sheet =>
  drawnSheet(count, {
    change: (panel, index) => {
      if (panel.pose === "passing" && panel.weightOn === "right")
        return slipped(panel, "right", 50);
      return index % 8 === 2 ? sunk(panel, 40) : panel;
    },
  });

describe("the printed sheet", () => {
  it("is one page, never lower than a landscape sheet of paper", () => {
    const pages = printed(drawnSheet(40));
    expect(pages).toHaveLength(1);
    const { width, height } = sizeOf(print(drawnSheet(9)));
    expect(width).toBe(1920);
    expect(height).toBeGreaterThanOrEqual(Math.floor(1920 / Math.SQRT2));
  });

  it("says what the walk is: title, shot, date, tempo, yardstick, credit", () => {
    const sheet = drawnSheet(9, {
      head: {
        title: "Brindle carries the parcels",
        shot: "Low Tide Post, shot 12",
        framesPerStep: { left: 12, right: 12 },
        stepLength: 0.78,
        build: { headsTall: 7.5, legShare: 0.5, statureMetres: 1.8 },
      },
    });
    const words = wordsOf(print(sheet));
    expect(words).toContain("Brindle carries the parcels");
    expect(words).toContain("Low Tide Post, shot 12");
    expect(words).toContain(DATE);
    // 12 frames at 24 a second are 0.5 s; 0.78 leg lengths of 0.9 m in that time are 1.40 m/s.
    expect(words.join(" ")).toMatch(/24 frames a second.*12 frames a step, 0\.50 s: brisk/);
    expect(words.join(" ")).toMatch(/step 0\.78 leg lengths, 1\.56 a second, 1\.40 m\/s/);
    expect(words.join(" ")).toMatch(/Yardstick life/);
    expect(words.join(" ")).toMatch(/mocap\.cs\.cmu\.edu/);
  });

  it("says nothing in metres while the character has no height", () => {
    const head = { build: { headsTall: 7.5, legShare: 0.5, statureMetres: null } };
    expect(wordsOf(print(drawnSheet(9, { head }))).join(" ")).not.toContain("m/s");
  });

  it("hangs the panels in frame order, left to right, row under row", () => {
    const sheet = drawnSheet(24);
    const poses = new Set(sheet.panels.map(({ pose }) => pose as string));
    const labels = textBoxes(print(sheet)).filter(({ text }) => poses.has(text));
    expect(labels.map(({ text }) => text)).toEqual(sheet.panels.map(({ pose }) => pose));
    for (const row of [labels.slice(0, 12), labels.slice(12)]) {
      expect(new Set(row.map(({ top }) => top)).size).toBe(1);
      expect(row.map(({ left }) => left)).toEqual(
        row.map(({ left }) => left).sort((a, b) => a - b),
      );
    }
    expect(labels[12]?.top).toBeGreaterThan(labels[11]?.bottom ?? 0);
  });

  it("numbers every frame of the strip under the ruler", () => {
    const sheet = drawnSheet(11);
    const frames = sheet.panels.map(({ frame }) => String(frame));
    const words = wordsOf(print(sheet));
    const start = words.indexOf("frame");
    expect(start).toBeGreaterThan(-1);
    for (const frame of frames) expect(words.slice(start)).toContain(frame);
  });

  it("says every remark in words, numbered, and hangs its number on its panel", () => {
    const sheet = faulty(9);
    const review = reviewOf(sheet);
    const words = wordsOf(print(sheet));
    const said = review.remarks.filter(({ level }) => level !== "tidy");
    expect(said.length).toBeGreaterThan(0);
    const all = words.join(" ");
    for (const { title, why } of said) {
      expect(words.some((line) => new RegExp(`^\\d+ +${title}`).test(line))).toBe(true);
      expect(all).toContain(why.replace(/\s+/g, " "));
    }
    const keyed = layOutPages(wishFor(sheet)).flatMap((page) => page.keyed);
    for (const panel of sheet.panels) {
      const keys = remarksOn(keyed, panel.id).map(({ key }) => key);
      const [first, last] = [keys[0], keys.at(-1)];
      if (first !== undefined) {
        expect(words).toContain(first === last ? String(first) : `${first}–${last}`);
      }
    }
  });

  it("says what could not be judged, and what it needs", () => {
    const sheet = drawnSheet(9, {
      change: (panel) => ({ ...panel, marks: { side: {}, front: {} } }),
    });
    const words = wordsOf(print(sheet)).join(" ");
    expect(words).toContain("Not judged yet");
    for (const { needs } of reviewOf(sheet).cannotTell) expect(words).toContain(needs);
    expect(words).toContain("Hips not marked yet");
  });

  it("explains in the legend what the sheet shows, and nothing else", () => {
    const words = wordsOf(print(faulty(9)));
    for (const word of ["left", "right", "left limbs", "right limbs", "will show", "may show"]) {
      expect(words).toContain(word);
    }
    for (const word of ["foot on its heel", "flat", "on its toe", "broad pencil"]) {
      expect(words).toContain(word);
    }
    for (const absent of ["on purpose", "fine pencil", "under-drawing", "cannot be told"]) {
      expect(words).not.toContain(absent);
    }
  });
});

describe("a page that can be read", () => {
  const long = "an extraordinarily long-winded title, as productions ask for, ".repeat(6);
  const cases: [string, Sheet][] = [
    ...[0, 1, 3, 4, 9, 11, 12, 13, 24, 40].map((count): [string, Sheet] => [
      `${count} panels`,
      faulty(count),
    ]),
    ["long texts", drawnSheet(9, { head: { title: long, shot: long, credit: long.repeat(3) } })],
    [
      "one endless word",
      drawnSheet(9, { head: { title: "W".repeat(300), shot: "M".repeat(300) } }),
    ],
    ["breakdowns", drawnSheet(12, { change: (panel) => ({ ...panel, pose: "breakdown" }) })],
    [
      "one panel far off",
      drawnSheet(9, { change: (panel, at) => (at === 8 ? { ...panel, frame: 400 } : panel) }),
    ],
    ["all on one frame", drawnSheet(5, { change: (panel) => ({ ...panel, frame: 7 }) })],
    [
      "four-figure frames",
      drawnSheet(12, { change: (panel) => ({ ...panel, frame: panel.frame + 9000 }) }),
    ],
  ];

  it.each(cases)("leaves room between all texts, and none leaves the page: %s", (_, sheet) => {
    const svg = print(sheet);
    const { width, height } = sizeOf(svg);
    const boxes = textBoxes(svg);
    expect(overlaps(boxes)).toEqual([]);
    const off = boxes.filter(
      ({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height,
    );
    expect(off).toEqual([]);
  });

  it("sets no text smaller than 12 px at a page width of 1920", () => {
    for (const sheet of [faulty(11), faulty(24)]) {
      const smallest = Math.min(...textBoxes(print(sheet)).map(({ size }) => size));
      expect(smallest).toBeGreaterThanOrEqual(11.5);
    }
  });
});

describe("a hostile sheet", () => {
  it("cannot break out of the file", () => {
    const title = '</text><script>alert(1)</script>\u0000\u001b & "x"';
    const svg = print(drawnSheet(3, { head: { title, shot: title, credit: title } }));
    expect(svg).not.toContain("<script");
    expect([...svg].filter((letter) => letter < " " && letter !== "\n")).toEqual([]);
  });

  it("holds to the page though ink and marks lie far outside their panel", () => {
    const far = { x: -90_000, y: 70_000, precision: 4 };
    const sheet = drawnSheet(3, {
      change: (panel) => ({ ...panel, marks: { side: { "left-hip": far }, front: {} } }),
    });
    expect(overlaps(textBoxes(print(sheet)))).toEqual([]);
  });
});
