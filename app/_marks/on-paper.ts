import { PANEL } from "../../lib/body";
import type { Point } from "../../lib/geometry";

/** The nearest point that is on the paper, to a tenth of a panel unit: finer than a hand can mark. */
export function onPaper({ x, y }: Point): Point {
  return { x: tenth(within(x, PANEL.width)), y: tenth(within(y, PANEL.height)) };
}

const within = (value: number, most: number) => Math.min(most, Math.max(0, value));
const tenth = (value: number) => Math.round(value * 10) / 10;
