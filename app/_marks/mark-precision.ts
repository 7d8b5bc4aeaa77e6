import { PANEL } from "../../lib/body";

const PIXELS = 2; // a hand hits within two screen pixels
/** Shares of a leg: a figure is placed no better, and a mark that is worse would say nothing. */
const LEG_SHARE = { finest: 0.005, coarsest: 0.03 } as const;

/** What a mark carries that nobody has looked at on the drawing yet. Panel units, ±. */
export const COARSEST = LEG_SHARE.coarsest * PANEL.plainLeg;

/**
 * How exactly a mark is placed on a paper of this width: two screen pixels, at least 0.5 % and at
 * most 3 % of a leg.
 *
 * Units:   CSS pixels → panel units (±)
 */
export function markPrecision(width: number): number {
  const units = (PIXELS * PANEL.width) / width;
  return Math.min(COARSEST, Math.max(LEG_SHARE.finest * PANEL.plainLeg, units));
}
