import type { LegLength, Side } from "../body";
import { rootSumSquare } from "../geometry";
import { clearlyBeyond } from "./beyond";
import { type FootJoint, footPoints } from "./foot";
import type { WalkPanel } from "./walk";

/**
 * The least ± of how far a ball stands over its toe, leg lengths: marks that are exact say where a joint is, not
 * where the sole under it begins. Source: two placed marks, 0.5 % of a leg each, the finest that a hand places
 */
const LEAST_WITHIN = Math.SQRT2 * 0.005;

/**
 * Whether a foot's ball is up: it stands over the toe, by more than it does on the stand, beyond the ± of all the
 * marks that say so.
 *
 * Shapes:  `stand` is the walk's stand, on which the same foot lies flat, or null
 * Errors:  none; what is not marked shows nothing
 */
export function isBallUp(
  panel: WalkPanel,
  side: Side,
  { leg, stand }: { readonly leg: LegLength; readonly stand: WalkPanel | null },
): boolean {
  const up = ballOverToe(panel, side, leg);
  if (up === null) return false;
  const flat = stand === null ? null : ballOverToe(stand, side, leg);
  const by = up.by - (flat?.by ?? 0);
  const within = rootSumSquare(up.plusMinus, flat?.plusMinus ?? 0);
  return clearlyBeyond(by, Math.max(within, LEAST_WITHIN), 0);
}

function ballOverToe(panel: WalkPanel, side: Side, leg: LegLength) {
  if (leg.kind === "cannot-tell") return null;
  const points = footPoints(panel, side, leg);
  const at = (joint: FootJoint) => points.find((point) => point.joint === joint);
  const [ball, toe] = [at("ball"), at("toe")];
  if (ball === undefined || toe === undefined) return null;
  return { by: ball.y - toe.y, plusMinus: rootSumSquare(ball.plusMinus, toe.plusMinus) };
}
