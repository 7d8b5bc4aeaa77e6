import fc from "fast-check";
import type { PageChoice } from "../../../lib/export";
import { PAPER_NAMES } from "../../../lib/export";
import type { Kept, Remark, Review } from "../../../lib/gait";
import { SHEET_YARDSTICKS } from "../../../lib/gait";
import type { Sheet } from "../../../lib/sheet";
import { drawnSheet, reviewOf, slipped, sunk } from "./drawn-sheet";

/** Every page there is to print on. */
export const PAGES: readonly PageChoice[] = PAPER_NAMES.flatMap((paper) =>
  (["landscape", "portrait"] as const).map((orientation) => ({ paper, orientation })),
);

const WORDS = [
  "carries",
  "an extraordinarily-long-winded-word-without-an-end",
  "down the stairs",
  "الطُّرود",
  "מסדרון",
  "歩く",
  "🐈",
  "W".repeat(60),
] as const;
const text = (most: number) =>
  fc
    .array(fc.constantFrom(...WORDS), { maxLength: 12 })
    .map((words) => words.join(" ").slice(0, most).trim());

const tweak = fc.record({
  pose: fc.constantFrom("stand", "lead-in", "contact", "down", "passing", "up", "breakdown"),
  gap: fc.integer({ min: 0, max: 9 }),
  slip: fc.constantFrom(0, 0, 0, 60),
  sink: fc.constantFrom(0, 0, 0, 45),
  bare: fc.constantFrom(false, false, false, true),
  redraw: fc.constantFrom(false, false, false, true),
  weightOn: fc.constantFrom("left", "right", null),
});

/** Sheets of up to 30 panels in any order of poses, slipping, sinking, bare, under any title: as notes. */
export const anySheetNotes = fc.record({
  title: text(200),
  shot: text(120),
  credit: text(200),
  yardstick: fc.constantFrom(...SHEET_YARDSTICKS),
  kind: fc.constantFrom("plain", "heavy", "free"),
  firstFrame: fc.constantFrom(undefined, 1001),
  tweaks: fc.array(tweak, { maxLength: 30 }),
});

type SheetNotes = typeof anySheetNotes extends fc.Arbitrary<infer Notes> ? Notes : never;

/** The sheet that notes speak of. */
export function sheetOf({ tweaks, firstFrame, ...head }: SheetNotes): Sheet {
  let frame = 1;
  return drawnSheet(tweaks.length, {
    head: { ...head, ...(firstFrame === undefined ? {} : { firstFrame }) },
    change: (panel, index) => {
      const by = tweaks[index];
      if (by === undefined) return panel;
      frame += by.gap;
      const { pose, weightOn } = by;
      const moved = sunk(slipped(panel, weightOn ?? "left", by.slip), by.sink);
      const toRedraw = { side: by.redraw, front: false };
      const labelled = { ...moved, frame, pose, weightOn, toRedraw };
      return by.bare
        ? { ...labelled, ink: { side: [], front: [] }, marks: { side: {}, front: {} } }
        : labelled;
    },
  });
}

/** The review of a sheet with every third of its remarks kept on purpose, for a reason. */
export function partlyKept(sheet: Sheet, reason: string): Review {
  const review = reviewOf(sheet);
  const isKept = (_: Remark, index: number) => index % 3 === 0;
  const kept = review.remarks.filter(isKept).map((remark, index): Kept => {
    const panel = remark.panels.at(-1) ?? "";
    const scope = { kind: "panel", panel, side: remark.side } as const;
    const { check, measured } = remark;
    const entry = { id: `kept${index}`, check, scope, reason, measured, by: "Animator 2" };
    return { remark, entry };
  });
  const remarks = review.remarks.filter((remark, index) => !isKept(remark, index));
  return { ...review, remarks, kept };
}

export { text as anyText };
