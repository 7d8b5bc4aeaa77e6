import { type Frame, isStepPose, roomIn, spreadFrames, TRADE_SHARES } from "../../motion";
import type { PanelId } from "../sheet";
import { type Section, sectionsOf } from "./sections";
import { movedOnly, type TimedSheet, type TimePlan, type TimeScope } from "./time-plan";

/**
 * The nearest even layout: contacts stay where they are, and what lies between them is spread over whole
 * exposures. Down, passing and up go to ¼, ½ and ¾ of the step; breakdowns lie evenly between their
 * neighbours; a step drawn in another order is spread by count. A step that has fewer drawn frames
 * than panels, or no next contact, is left as it is.
 *
 * Units:   frames, counted from 1
 * Errors:  none; a step that is not there plans nothing
 * Source:  beside `TRADE_SHARES`
 */
export function planEvenOut({ head, panels }: TimedSheet, scope: TimeScope): TimePlan {
  const frames = new Map<PanelId, Frame>();
  const { sections } = sectionsOf(panels);
  for (const section of sections) {
    const { contact, inner, next } = section;
    if (next === null || (scope !== "strip" && scope.step !== contact.id)) continue;
    const span = { from: contact.frame, to: next.frame, exposure: head.exposure };
    if (inner.length > roomIn(span)) continue;
    const shares = evenShares(section);
    const moments = inner.map(({ frame }, at) => ({
      moment: span.from + (shares[at] ?? 0) * (span.to - span.from),
      now: frame,
    }));
    const spread = spreadFrames(moments, span);
    inner.forEach(({ id, frame }, at) => {
      frames.set(id, spread[at] ?? frame);
    });
  }
  return { frames: movedOnly(panels, frames), head: {} };
}

/** Where each inner panel belongs, as a share of the step. */
function evenShares({ inner }: Section): readonly number[] {
  const named = inner.map(({ pose }) => (isStepPose(pose) ? TRADE_SHARES[pose] : null));
  const known = named.filter((share) => share !== null);
  const rises = known.every((share, at) => at === 0 || share > (known[at - 1] ?? 0));
  const shares: (number | null)[] = [0, ...(rises ? named : inner.map(() => null)), 1];
  return shares.slice(1, -1).map((share, at) => share ?? between(shares, at + 1));
}

/** The share of a pose without one of its own: evenly between the nearest that have. */
function between(shares: readonly (number | null)[], at: number): number {
  const before = shares.findLastIndex((share, index) => index < at && share !== null);
  const after = shares.findIndex((share, index) => index > at && share !== null);
  const from = shares[before] ?? 0;
  const to = shares[after] ?? 1;
  return from + ((to - from) * (at - before)) / (after - before);
}
