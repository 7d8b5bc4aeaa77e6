import { rootSumSquare } from "../../geometry";
import type { WalkPanel } from "../walk";
import type { Held } from "./hold-still";

/** By what a chain of panels hangs: the panel before its first one, from which the travel is exact. */
interface Hung {
  readonly on: WalkPanel | null;
  /** Which chain came when: a later one may hang by an earlier one, never the other way round. */
  readonly nth: number;
}

/**
 * ± of how far apart two panels stand, where planted feet tell it. Panels of one chain err together; those of
 * two are told apart through the panels by which the later chain hangs.
 *
 * Units:   leg lengths
 * Errors:  none
 */
export function withinOf(
  { panels }: { readonly panels: readonly WalkPanel[] },
  held: Held,
): (from: WalkPanel, to: WalkPanel) => number {
  const hung = hungOf(panels, held);
  const told = new Map<WalkPanel, Map<WalkPanel, number>>();
  const work = (from: WalkPanel, to: WalkPanel): number => {
    if (from === to) return 0;
    const tied = held.apart(from, to);
    if (tied !== null) return tied;
    const [one, other] = [hung.get(from), hung.get(to)];
    if (one === undefined || other === undefined) return 0;
    const [early, late] = one.nth < other.nth ? [from, to] : [to, from];
    const { on } = one.nth < other.nth ? other : one;
    const own = held.at(late) === null ? 0 : held.plusMinus(late);
    // What hangs by nothing stands where the travel has it, whatever came before.
    return on === null ? rootSumSquare(own, toStart(early)) : rootSumSquare(own, work(early, on));
  };
  const toStart = (panel: WalkPanel) => (held.at(panel) === null ? 0 : held.plusMinus(panel));
  return (from, to) => {
    const ofFrom = told.get(from) ?? new Map<WalkPanel, number>();
    if (ofFrom.size === 0) told.set(from, ofFrom);
    const known = ofFrom.get(to);
    if (known !== undefined) return known;
    const within = work(from, to);
    ofFrom.set(to, within);
    return within;
  };
}

/**
 * By what each panel hangs. What was set, or is tied to that, hangs by nothing, and the travel leads from one
 * chain, and from a panel without planted marks, to the next.
 */
function hungOf(panels: readonly WalkPanel[], held: Held): ReadonlyMap<WalkPanel, Hung> {
  const hung = new Map<WalkPanel, Hung>();
  const chains = new Map<WalkPanel, Hung>();
  for (const [nth, panel] of panels.entries()) {
    const byTravel = { on: panels[nth - 1] ?? null, nth };
    const first = held.hungBy(panel);
    if (first !== null && !chains.has(first)) chains.set(first, byTravel);
    const ofChain = first === null ? SET : (chains.get(first) ?? byTravel);
    hung.set(panel, held.at(panel) === null ? byTravel : ofChain);
  }
  return hung;
}

const SET: Hung = { on: null, nth: -1 };
