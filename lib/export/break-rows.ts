import type { Panel } from "../sheet";

type Placed = Pick<Panel, "pose">;

const LOOSE = 1; // panels a row may hold beyond an even share, so that a step stays whole

/**
 * Breaks a strip into so many rows, in order, as even as can be. A break falls before a contact, where a
 * step begins, as far as rows that are nearly even allow.
 *
 * Shapes:  panels in frame order; rows, none of them empty (fewer than asked where panels are fewer)
 */
export function breakRows<P extends Placed>(panels: readonly P[], rowCount: number): P[][] {
  const rows = Math.min(rowCount, panels.length);
  if (rows === 0) return [];
  const most = Math.ceil(panels.length / rows) + (rows > 1 ? LOOSE : 0);
  const even = panels.length / rows;
  // best[r][n]: the cheapest way to lay the first n panels into r rows, and where its last row starts.
  const best: Way[][] = [[{ cost: 0, start: 0 }]];
  for (let row = 1; row <= rows; row += 1) {
    const ways: Way[] = [];
    for (let end = row; end <= panels.length; end += 1) {
      for (let start = Math.max(row - 1, end - most); start < end; start += 1) {
        const before = best[row - 1]?.[start];
        if (before === undefined) continue;
        const torn = start > 0 && panels[start]?.pose !== "contact" ? TORN : 0;
        const cost = before.cost + torn + (end - start - even) ** 2;
        if (cost < (ways[end]?.cost ?? Number.POSITIVE_INFINITY)) ways[end] = { cost, start };
      }
    }
    best.push(ways);
  }
  return rowsOf(best, panels);
}

interface Way {
  readonly cost: number;
  readonly start: number;
}

const TORN = 1e6; // a torn step costs more than any unevenness

function rowsOf<P>(best: readonly (readonly Way[])[], panels: readonly P[]): P[][] {
  const rows: P[][] = [];
  let end = panels.length;
  for (let row = best.length - 1; row > 0; row -= 1) {
    const start = best[row]?.[end]?.start ?? 0;
    rows.unshift(panels.slice(start, end));
    end = start;
  }
  return rows;
}
