import { PANEL } from "../../lib/body";
import { type Walk, walkLegLength } from "../../lib/gait";

const PIXELS = 2; // a hand hits within two screen pixels
/** Shares of a leg: a figure is placed no better, and a mark that is worse would say nothing. */
const LEG_SHARE = { finest: 0.005, coarsest: 0.03 } as const;

/** The leg of the figure on the paper, or a plain figure's while it is not marked. Panel units. */
export function legOn(panels: Walk["panels"]): number {
  const leg = walkLegLength({ panels });
  return leg.kind === "value" ? leg.value : PANEL.plainLeg;
}

/** What a mark carries that nobody has looked at on the drawing yet. Panel units, ±. */
export function coarsest(leg: number): number {
  return LEG_SHARE.coarsest * leg;
}

/**
 * How exactly a mark is placed on a paper of this width: two screen pixels, at least 0.5 % and at
 * most 3 % of the figure's leg.
 *
 * Units:   CSS pixels, panel units of the leg → panel units (±)
 */
export function markPrecision(width: number, leg: number): number {
  const units = (PIXELS * PANEL.width) / width;
  return Math.min(coarsest(leg), Math.max(LEG_SHARE.finest * leg, units));
}
