import type { Point } from "../../../geometry";
import { curve } from "./curve";
import type { Pencil } from "./pencil";

/** Leg lengths: a sole higher over the ground than this throws no dark under itself. */
const TOUCHES = 0.03;

/** A few strokes on the ground under what stands on it: it is the weight that makes them dark. */
export function drawGroundShadow(pencil: Pencil, sole: readonly Point[], firm: number): void {
  const standing = sole.filter(({ y }) => y < TOUCHES).map(({ x }) => x);
  if (standing.length === 0) return;
  const [from, to] = [Math.min(...standing) - 0.07, Math.max(...standing) + 0.09];
  for (const [start, end, y] of [
    [from, to, -0.012],
    [from + 0.03, to - 0.05, -0.024],
    [from + 0.08, to - 0.02, -0.034],
  ] as const) {
    const drop = 0.004 * pencil.chance();
    pencil.line(
      curve([
        { x: start, y },
        { x: (start + end) / 2, y: y - drop },
        { x: end, y: y + 0.003 },
      ]),
      { width: 5, firm },
    );
  }
}
