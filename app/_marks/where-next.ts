import type { Panel } from "../../lib/sheet";
import type { MarkingSlice, PaperName } from "../_workspace";
import { quickSetDone } from "./proposals";

/**
 * Which paper is marked next once one view's quick set is done: the same view of the next panel that
 * lacks it, the strip taken round, or first the panel's other view. Null when nothing is left.
 */
export function whereNext(
  panels: readonly Panel[],
  { panel, view }: PaperName,
  onward: MarkingSlice["onward"],
): PaperName | null {
  const at = panels.findIndex(({ id }) => id === panel);
  const here = panels[at];
  const round = [...panels.slice(at + 1), ...panels.slice(0, Math.max(0, at))];
  const lacks = (one: Panel, seen: PaperName["view"]) => !quickSetDone(one.marks[seen], seen);
  if (onward === "next-panel") {
    const next = round.find((one) => lacks(one, view));
    return next === undefined ? null : { panel: next.id, view };
  }
  const other = view === "side" ? "front" : "side";
  if (here !== undefined && lacks(here, other)) return { panel, view: other };
  const next = round.find((one) => lacks(one, "side") || lacks(one, "front"));
  if (next === undefined) return null;
  return { panel: next.id, view: lacks(next, "side") ? "side" : "front" };
}
