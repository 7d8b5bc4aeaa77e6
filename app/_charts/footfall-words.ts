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
  const feet = SIDES.map((side) => {
    const known = cells.filter((cell) => cell.side === side && cell.state !== null);
    const down = known.filter(({ state }) => state !== "air");
    return charts.footSummary(common.side[side], tenth(frames(down)), tenth(frames(known)));
  });
  const { both, neither, known } = together(cells);
  const rest = known > 0 ? [charts.bothSummary(tenth(both), tenth(neither), tenth(known))] : [];
  return [...feet, ...rest].join(" ");
}

/** For how many frames both feet are down, and neither, of those in which both can be told. */
function together(cells: readonly FootfallCell[]) {
  const [left, right] = SIDES.map((side) => cells.filter((cell) => cell.side === side));
  const sum = { both: 0, neither: 0, known: 0 };
  for (const one of left ?? []) {
    for (const other of right ?? []) {
      const frames = Math.min(one.to, other.to) - Math.max(one.from, other.from);
      if (!(frames > 0) || one.state === null || other.state === null) continue;
      sum.known += frames;
      if (one.state !== "air" && other.state !== "air") sum.both += frames;
      if (one.state === "air" && other.state === "air") sum.neither += frames;
    }
  }
  return sum;
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
