import type { LegLength } from "../body";
import type { WalkPanel } from "./walk";

type Work<Told> = (panel: WalkPanel, leg: LegLength) => Told;

/**
 * Remembers what was worked out on a panel, for as long as somebody holds the panel. Panels are never
 * changed but replaced, so after one moved mark only its own panel is worked out again, unless the
 * leg it is measured by has changed, too.
 *
 * Errors:  those of the work
 */
export function perPanel<Told>(work: Work<Told>): Work<Told> {
  const known = new WeakMap<WalkPanel, { readonly legUnits: number | null; readonly told: Told }>();
  return (panel, leg) => {
    const legUnits = leg.kind === "value" ? leg.value : null;
    const before = known.get(panel);
    if (before !== undefined && before.legUnits === legUnits) return before.told;
    const told = work(panel, leg);
    known.set(panel, { legUnits, told });
    return told;
  };
}
