import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Box,
  layOutPages,
  PAPERS,
  type PageLayout,
  pageSvg,
  UNIT_MM,
} from "../../../lib/export";
import { VIEWS } from "../../../lib/geometry";
import { drawnSheet } from "./drawn-sheet";
import { printed, wishFor } from "./printed";
import { anySheetNotes, anyText, PAGES, partlyKept, sheetOf } from "./sheet-dice";
import { overlaps, textBoxes } from "./svg-boxes";

const SEED = Number(process.env.SEED ?? Date.now() % 1e6);
const RUNS = { seed: SEED, numRuns: 24 };
const HAIR = 0.06; // units: places in a file are rounded to a tenth

const anyPrint = fc.record({
  notes: anySheetNotes,
  page: fc.constantFrom(...PAGES),
  reason: anyText(300),
});

type Print = typeof anyPrint extends fc.Arbitrary<infer P> ? P : never;

function layOut({ notes, page, reason }: Print) {
  const sheet = sheetOf(notes);
  const wish = { ...wishFor(sheet, page), review: partlyKept(sheet, reason) };
  return { wish, layouts: layOutPages(wish) };
}

/** Papers, charts and the room between ruler and charts, of one page. */
function boxesOf({ strip }: PageLayout): readonly Box[] {
  return strip.rows.flatMap(({ cells, ruler, hips, footfalls, gaps }) => [
    ...cells.flatMap(({ views }) => VIEWS.map((view) => views[view])),
    { x: hips.x, width: hips.width, y: ruler.y, height: hips.y - ruler.y },
    hips,
    footfalls,
    gaps,
  ]);
}

function touching(boxes: readonly Box[]): readonly [Box, Box][] {
  return boxes.flatMap((one, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (other) =>
          one.x + HAIR < other.x + other.width &&
          other.x + HAIR < one.x + one.width &&
          one.y + HAIR < other.y + other.height &&
          other.y + HAIR < one.y + one.height,
      )
      .map((other): [Box, Box] => [one, other]),
  );
}

describe(`a print on paper (SEED=${SEED})`, () => {
  it("has every panel once, in order, with its charts inside the margins and over nothing", () => {
    fc.assert(
      fc.property(anyPrint, (print) => {
        const { wish, layouts } = layOut(print);
        const rows = layouts.flatMap(({ strip }) => strip.rows);
        const hung = rows.flatMap(({ cells }) => cells.map(({ panel }) => panel.id));
        expect(hung).toEqual(wish.sheet.panels.map(({ id }) => id));
        for (const layout of layouts) {
          const { format, width, height, strip } = layout;
          const boxes = boxesOf(layout);
          expect(touching(boxes)).toEqual([]);
          const [foot, right] = [height - format.margin + HAIR, width - format.margin + HAIR];
          for (const box of boxes) {
            expect(box.x).toBeGreaterThanOrEqual(format.margin - HAIR);
            expect(box.x + box.width).toBeLessThanOrEqual(right);
            expect(box.y + box.height).toBeLessThanOrEqual(foot);
          }
          for (const { notes } of layouts) expect(notes.bottom).toBeLessThanOrEqual(foot);
          if (strip.rows.length > 0 && layout.notes.runs.length > 0) {
            expect(layout.notes.runs[0]?.y).toBeGreaterThan(strip.bottom);
          }
        }
      }),
      RUNS,
    );
  });

  it("keeps all text on the page and apart, remarks and reasons whole", () => {
    fc.assert(
      fc.property(anyPrint, (print) => {
        const { wish, layouts } = layOut(print);
        const pages = layouts.map((layout) => textBoxes(pageSvg(layout, wish)));
        pages.forEach((boxes, index) => {
          const { width, height } = layouts[index] ?? { width: 0, height: 0 };
          expect(overlaps(boxes)).toEqual([]);
          const off = boxes.filter(
            ({ left, right, top, bottom }) =>
              left < 0 || right > width || top < 0 || bottom > height,
          );
          expect(off).toEqual([]);
        });
        const said = unspaced(pages.flat().map(({ text }) => text));
        for (const { why } of wish.review.remarks.filter(({ level }) => level !== "tidy")) {
          expect(said).toContain(unspaced([why]));
        }
        if (wish.review.kept.length > 0) expect(said).toContain(unspaced([print.reason]));
        expect(said).toContain(unspaced([print.notes.title]));
      }),
      RUNS,
    );
  });

  it("hangs all rows by one scale, and draws no figure smaller than a thumb", () => {
    fc.assert(
      fc.property(anyPrint, (print) => {
        const strips = layOut(print).layouts.flatMap(({ strip }) =>
          strip.rows.length === 0 ? [] : [strip],
        );
        const [first] = strips;
        if (first === undefined) return;
        for (const { scale } of strips) expect(scale).toBe(first.scale);
        const charts = strips.flatMap(({ rows }) => rows.map(({ hips }) => hips.height));
        for (const height of charts) expect(height).toBeCloseTo(charts[0] ?? 0, 6);
        // A plain figure is 840 panel units high; a thumb's length is about 25 mm.
        expect(840 * first.scale * UNIT_MM).toBeGreaterThanOrEqual(25);
      }),
      RUNS,
    );
  });
});

const unspaced = (texts: readonly string[]): string => texts.join("").replace(/\s+/g, "");

describe("a page of paper", () => {
  it.each(PAGES)("says its size in millimetres: $paper $orientation", (page) => {
    if (page.paper === null) throw new Error("a paper was asked for");
    const { width, height } = PAPERS[page.paper];
    const size = page.orientation === "portrait" ? [width, height] : [height, width];
    for (const svg of printed(drawnSheet(9), page)) {
      const [, wide, high, units] =
        /<svg [^>]*width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+)/.exec(svg) ?? [];
      expect([Number(wide), Number(high)]).toEqual(size);
      expect(Number(units) * UNIT_MM).toBeCloseTo(size[0] ?? 0, 6);
    }
  });

  it("numbers its pages where there are several, the title on each", () => {
    const pages = printed(drawnSheet(40), { paper: "a4", orientation: "landscape" });
    expect(pages.length).toBeGreaterThan(2);
    pages.forEach((svg, index) => {
      const words = textBoxes(svg).map(({ text }) => text);
      expect(words).toContain(`page ${index + 1} of ${pages.length}`);
      expect(words).toContain("A plain walk, captured");
    });
    const [alone = "", ...more] = printed(drawnSheet(9), { paper: "a3", orientation: "landscape" });
    expect(more).toEqual([]);
    expect(alone).not.toContain("page 1 of 1");
  });

  it("breaks the strip where a step begins", () => {
    const layouts = layOutPages(wishFor(drawnSheet(40), { paper: "a4", orientation: "portrait" }));
    const rows = layouts.flatMap(({ strip }) => strip.rows);
    expect(rows.length).toBeGreaterThan(3);
    for (const { cells } of rows) expect(cells[0]?.panel.pose).toBe("contact");
  });
});

describe("the frames of a print", () => {
  it("are the sheet's own, and the shot's under them where it counts otherwise", () => {
    const sheet = drawnSheet(5, { head: { firstFrame: 1001 } });
    const [svg = ""] = printed(sheet, { paper: "a3", orientation: "landscape" });
    const boxes = textBoxes(svg);
    for (const { frame } of sheet.panels) {
      const own = boxes.find(({ text }) => text === `${frame}`);
      const shot = boxes.find(({ text }) => text === `${frame + 1000}`);
      expect(shot?.top).toBeGreaterThan(own?.bottom ?? Number.POSITIVE_INFINITY);
    }
    expect(boxes.map(({ text }) => text)).toContain("in the shot");
  });
});
