import { expect, it } from "vitest";
import { type Mark, solvedKnee, type ViewMarks } from "../../../lib/body";

const mark = (x: number, y: number): Mark => ({ x, y, precision: 0 });

/** A leg of 200 units, its knee so far ahead of the line from hip to ankle, panel units. */
const leg = (ahead: number): ViewMarks => ({
  "left-hip": mark(0, 0),
  "left-knee": mark(ahead, 100),
  "left-ankle": mark(0, 200),
});

/** Where the knee is put when the foot is lifted by 20 units. */
function lifted(ahead: number): number {
  const after = { ...leg(ahead), "left-ankle": mark(0, 180) };
  const solved = solvedKnee(leg(ahead), after, "left");
  return solved.kind === "solved" ? solved.knee.x : Number.NaN;
}

it("bends a knee forward that was drawn straight, or by an unsteady hand not quite", () => {
  // Half of 180 along, 100 long: √(100² − 90²) = 43.6 ahead.
  expect(lifted(0)).toBeCloseTo(43.6, 1);
  expect(lifted(2)).toBeCloseTo(43.6, 0);
  expect(lifted(-2)).toBeCloseTo(43.6, 0); // 2.3° past straight
});

it("keeps a knee bent back that was drawn so", () => {
  expect(lifted(-10)).toBeLessThan(-40); // 11.4° past straight
});

/** How far the knee lies behind the line, panel units, where it is bent back by so many degrees. */
const behind = (degrees: number) => -100 * Math.tan((degrees * Math.PI) / 360);

it("takes up to 5 degrees past straight for straight, and no more", () => {
  expect(lifted(behind(4.9))).toBeGreaterThan(40);
  expect(lifted(behind(5.1))).toBeLessThan(-40);
});
