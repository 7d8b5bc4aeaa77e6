import type { WalkPanel } from "../walk";
import { addTo, bandedZero, solverOf } from "./banded";
import { type PlantedMark, printOf } from "./planted-marks";

/** Panels placed so that planted marks stay where they are. */
export interface Held {
  /** Ground x of a panel's middle, leg lengths; null where nothing holds it. */
  at(panel: WalkPanel): number | null;
  /** The chain of a panel none of which was set: it may stand anywhere, and is told from its first panel. */
  hungBy(panel: WalkPanel): WalkPanel | null;
  /** ± of how far apart two panels are, leg lengths; null where nothing ties them to each other. */
  apart(from: WalkPanel, to: WalkPanel): number | null;
  /** ± of a panel's place, against what was set or against the first panel of its chain. */
  plusMinus(panel: WalkPanel): number;
}

/**
 * Places panels by least squares so that each footprint's marks come to lie on one spot, each mark counting
 * by its ±. Panels are tied to each other through the footprints they share; what was set stays as it is.
 *
 * @param set ground x of panels that stand for certain
 * Units:   leg lengths
 * Source:  adjustment of observations by least squares, weights 1 / ±² (Gauss)
 * Cost:    the panels, times a footprint's panels squared
 */
export function holdStill(
  marks: readonly PlantedMark[],
  set: ReadonlyMap<WalkPanel, number>,
): Held {
  const inTime = marks.toSorted((a, b) => a.panel.frame - b.panel.frame);
  const chains = chainsOf(inTime, set);
  const fixed = new Map(set);
  for (const first of chains.hung.values()) fixed.set(first, 0);
  const index = indexOf(inTime, fixed);
  const { solve, right } = equations(inTime, fixed, index);
  const places = solve(right);
  const at = (panel: WalkPanel) => {
    const row = index.get(panel);
    return row === undefined ? (fixed.get(panel) ?? null) : (places[row] ?? Number.NaN);
  };
  const spread = (asked: readonly (readonly [panel: WalkPanel, times: number])[]) => {
    const ask = new Float64Array(right.length);
    for (const [panel, times] of asked) {
      const row = index.get(panel);
      if (row !== undefined) ask[row] = (ask[row] ?? 0) + times;
    }
    const told = solve(ask);
    return Math.sqrt(told.reduce((sum, value, row) => sum + value * (ask[row] ?? 0), 0));
  };
  return {
    at,
    hungBy: (panel) => chains.hung.get(chains.of(panel)) ?? null,
    apart(from, to) {
      const tied = at(from) !== null && at(to) !== null && chains.of(from) === chains.of(to);
      if (!tied) return null;
      return spread([
        [to, 1],
        [from, -1],
      ]);
    },
    plusMinus: (panel) => spread([[panel, 1]]),
  };
}

/** A panel, or a footprint: what a place is found for. */
type Unknown = WalkPanel | string;

/** Rows of the equations by time, each footprint after its first panel: so the band stays narrow. */
function indexOf(
  inTime: readonly PlantedMark[],
  fixed: ReadonlyMap<WalkPanel, number>,
): ReadonlyMap<Unknown, number> {
  const index = new Map<Unknown, number>();
  for (const mark of inTime) {
    const unknown = fixed.has(mark.panel) ? [printOf(mark)] : [mark.panel, printOf(mark)];
    for (const one of unknown) if (!index.has(one)) index.set(one, index.size);
  }
  return index;
}

function equations(
  marks: readonly PlantedMark[],
  fixed: ReadonlyMap<WalkPanel, number>,
  index: ReadonlyMap<Unknown, number>,
) {
  const row = (unknown: Unknown) => index.get(unknown) ?? 0;
  const reach = marks.map((mark) =>
    fixed.has(mark.panel) ? 0 : Math.abs(row(mark.panel) - row(printOf(mark))),
  );
  const matrix = bandedZero(index.size, Math.max(0, ...reach));
  const right = new Float64Array(index.size);
  const add = (at: number, by: number) => {
    right[at] = (right[at] ?? 0) + by;
  };
  for (const mark of marks) {
    const weight = 1 / mark.plusMinus ** 2;
    const print = row(printOf(mark));
    const place = fixed.get(mark.panel);
    addTo(matrix, print, print, weight);
    add(print, weight * (mark.x + (place ?? 0)));
    if (place !== undefined) continue;
    const panel = row(mark.panel);
    addTo(matrix, panel, panel, weight);
    addTo(matrix, panel, print, -weight);
    add(panel, -weight * mark.x);
  }
  return { solve: solverOf(matrix), right };
}

/** Which panels hang together: by footprints that they share, or because each was set. */
function chainsOf(inTime: readonly PlantedMark[], set: ReadonlyMap<WalkPanel, number>) {
  const parent = new Map<Unknown, Unknown>();
  const of = (one: Unknown): Unknown => {
    let root = one;
    for (let up = parent.get(root); up !== undefined; up = parent.get(root)) root = up;
    if (root !== one) parent.set(one, root);
    return root;
  };
  const join = (one: Unknown, other: Unknown) => {
    const [a, b] = [of(one), of(other)];
    if (a !== b) parent.set(a, b);
  };
  for (const mark of inTime) join(mark.panel, printOf(mark));
  for (const panel of set.keys()) join(panel, SET);
  const hung = new Map<Unknown, WalkPanel>();
  for (const { panel } of inTime) {
    const chain = of(panel);
    if (chain !== of(SET) && !hung.has(chain)) hung.set(chain, panel);
  }
  return { of, hung };
}

const SET = "set by hand";
