import type { Method } from "../method";
import type { CommonYardstick } from "../walk";
import { COMMON_YARDSTICKS } from "../walk";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/**
 * How far the toe stands over the heel, leg lengths: less than this at contact is not above it, more
 * than this as the foot peels off is. Every captured foot lands with its toe 9.6 % or more above its
 * heel and leaves with it 1.8 % or more below (22 steps of five walks; toe up 10 ± 1.5 % in 317).
 */
export const TOE_OVER_HEEL = 0.02;
export const TOE_SOURCE =
  "317 captured steps by 15 people: at contact the front toe is up 10 % of a leg (sd 1.5 %), the rear heel 4 % (sd 1.2 %)";

/** How far a foot may pitch and still be flat, radians (10°). */
export const FLAT_WITHIN = (10 * Math.PI) / 180;
export const FLAT_SOURCE =
  "the poses of five captured walks, 22 steps: at passing the standing foot pitches by at most 1.2°; the handbooks have it flat from the down on";

/** Poses at which the foot that carries is flat. In life the down comes before the foot is. */
export const FLAT_AT: Readonly<Record<CommonYardstick, readonly ("down" | "passing")[]>> = {
  trade: ["down", "passing"],
  life: ["passing"],
};

export const footRollMethod: Method = {
  check: "foot-roll",
  asks: "Does the foot land on its heel, lie flat, and peel off from heel to toe?",
  measures:
    "Reads heel and toe of the foot that carries: at the contact how far the toe is up, at passing (and by the trade at the down) how far the foot pitches, and after passing whether the toe rises before the heel.",
  formula: [
    "toe up = y(toe) − y(heel), leg lengths; by the ball where the toe is not marked",
    "pitch = angle of heel to ball over the ground, toe up positive",
    "y = height over the ground line",
    "± = √( ±heel² + ±toe² )",
  ],
  limits: [
    {
      of: "toe over heel at contact",
      yardsticks: COMMON_YARDSTICKS,
      level: "may-show",
      fires: "below",
      value: TOE_OVER_HEEL,
      unit: "leg",
      source: TOE_SOURCE,
      tripRate: 0,
    },
    {
      of: "pitch of the foot that carries, at passing",
      yardsticks: COMMON_YARDSTICKS,
      level: "may-show",
      fires: "outside",
      value: [-FLAT_WITHIN, FLAT_WITHIN],
      unit: "rad",
      source: FLAT_SOURCE,
      tripRate: 0,
    },
    {
      of: "pitch of the foot that carries, at the down",
      yardsticks: COMMON_YARDSTICKS.filter((yardstick) => FLAT_AT[yardstick].includes("down")),
      level: "may-show",
      fires: "outside",
      value: [-FLAT_WITHIN, FLAT_WITHIN],
      unit: "rad",
      source: FLAT_SOURCE,
      tripRate: null,
    },
    {
      of: "toe over heel after passing, up to the other foot's contact",
      yardsticks: COMMON_YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: TOE_OVER_HEEL,
      unit: "leg",
      source: TOE_SOURCE,
      tripRate: 0,
    },
    ...patternLimits("toe over heel at contact", NEIGHBOURS.landing),
    ...patternLimits("pitch of the foot that carries, at passing", NEIGHBOURS.flat),
    ...patternLimits("toe over heel as the foot leaves, at the next contact", NEIGHBOURS.leaving),
  ],
  life: "At contact the front toe is up 10 % of a leg (sd 1.5 %) and the rear heel 4 % (sd 1.2 %); at passing the standing foot pitches by at most 1.2°. Counted on 22 captured steps, none trips a limit.",
};
