import type { BandPoint, HipCurve } from "../../lib/gait";
import { charts } from "../_words";

/** "0.93 ± 0.01 leg"; three decimals where it is known that well. Units: leg lengths. */
export function tellHeight({ value, plusMinus }: { value: number; plusMinus: number }): string {
  const decimals = plusMinus > 0 && plusMinus < 0.005 ? 3 : 2;
  const slack = plusMinus > 0 ? ` ± ${Math.max(plusMinus, 10 ** -decimals).toFixed(decimals)}` : "";
  return `${value.toFixed(decimals)}${slack} leg`;
}

/** What the yardstick expects at a frame, in words; null where it expects nothing there. */
export function tellExpected(bands: HipCurve["bands"], frame: number): string | null {
  const point = bands.flatMap((band) => band.points).find((at) => at.frame === frame);
  return point === undefined ? null : tellBounds(point);
}

function tellBounds({ low, high }: BandPoint): string {
  const { table } = charts;
  if (low !== null && high !== null) return table.between(low.toFixed(3), high.toFixed(3));
  if (low !== null) return table.above(low.toFixed(3));
  return high === null ? table.nothing : table.below(high.toFixed(3));
}
