import type { StepPose } from "../../motion";
import { type CommonYardstick, commonOf, type Yardstick } from "../walk";
import type { Moment } from "./posed-legs";

/**
 * The moment of the published step that each pose shows. A pose is known by what it looks like, not by
 * when the trade's even spacing has it: passing is where the ankles cross, at 0.60 of the step as in the
 * captured walks (0.55 to 0.67); at 0.50 one is still 17 % of a leg behind the other. The trade's down
 * is the deepest knee on a flat foot, as the other foot leaves, at its own quarter of the step; life's
 * the lowest hips, at 0.07. The trade's up is its own three quarters, life's the highest hips, 0.50.
 */
const SHARES: Readonly<Record<CommonYardstick, Readonly<Record<StepPose, number>>>> = {
  trade: { contact: 0, down: 0.25, passing: 0.6, up: 0.75 },
  life: { contact: 0, down: 0.07, passing: 0.6, up: 0.5 },
};

/**
 * What the trade asks of the hips and the published angles do not give: the down under the contact,
 * the up over the passing, leg lengths. The handbooks have no numbers: our own choice, which keeps the
 * whole step's range (at most 7.5 %) below the 8 % from which it reads as a bounce.
 */
const TRADE_DOWN_UNDER_CONTACT = 0.015;
const TRADE_UP_OVER_PASSING = 0.01;

/** The moment of a step that a pose shows by a yardstick. */
export function poseMoment(
  pose: StepPose,
  yardstick: Yardstick,
  stepLength: number | null,
): Moment {
  const common = commonOf(yardstick);
  const shares = SHARES[common];
  const hips =
    common === "life"
      ? null
      : pose === "down"
        ? { over: shares.contact, by: -TRADE_DOWN_UNDER_CONTACT }
        : pose === "up"
          ? { over: shares.passing, by: TRADE_UP_OVER_PASSING }
          : null;
  return { share: shares[pose], stepLength, hips };
}

/**
 * A lead-in leaves the stand: the passing of a step of half the length, which is what a first step from
 * two feet side by side covers. Our own choice; no published angles were at hand.
 */
export function leadInMoment(stepLength: number | null): Moment {
  return { share: SHARES.trade.passing, stepLength: (stepLength ?? PLAIN_STEP) / 2, hips: null };
}

/** Leg lengths a step where nobody said: the median of 317 captured steps. */
const PLAIN_STEP = 0.78;
