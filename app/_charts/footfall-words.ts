import { SIDES } from "../../lib/body";
import { charts, common } from "../_words";
import type { FootfallCell } from "./footfall-cells";

/** "on its heel", "cannot tell: needs …". */
export function tellFoot({ state, needs }: FootfallCell): string {
  return state === null ? charts.footUntold(needs ?? "") : charts.footState[state];
}

/** A cell in words: "left foot, frames 1 to 4: on its heel". */
export function tellCell(cell: FootfallCell): string {
  return charts.footfall(common.side[cell.side], tenth(cell.from), tenth(cell.to), tellFoot(cell));
}

/** How long each foot bears, of the frames that can be told. */
export function sumUpFootfalls(cells: readonly FootfallCell[]): string {
  const frames = (some: readonly FootfallCell[]) =>
    some.reduce((sum, { from, to }) => sum + to - from, 0);
  return SIDES.map((side) => {
    const known = cells.filter((cell) => cell.side === side && cell.state !== null);
    const down = known.filter(({ state }) => state !== "air");
    return charts.footSummary(common.side[side], tenth(frames(down)), tenth(frames(known)));
  }).join(" ");
}

/** A tenth of a frame is finer than anyone keys. */
export const tenth = (frames: number): string => `${Math.round(frames * 10) / 10}`;

/** Cells that follow each other and say the same, as one. */
export function joined(cells: readonly FootfallCell[]): readonly FootfallCell[] {
  const rows: FootfallCell[] = [];
  for (const cell of cells) {
    const last = rows.at(-1);
    if (last?.side === cell.side && tellFoot(last) === tellFoot(cell)) {
      rows[rows.length - 1] = { ...last, to: cell.to, width: last.width + cell.width };
    } else {
      rows.push(cell);
    }
  }
  return rows;
}
