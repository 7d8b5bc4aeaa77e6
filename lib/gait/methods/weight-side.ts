import type { Method } from "../method";
import { COMMON_YARDSTICKS } from "../walk";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/** How far ahead of the standing ankle the hips are at passing, leg lengths. */
export const AHEAD = { from: 0.03, to: 0.15 } as const; // life: 0.093 on average, 0.042 to 0.136
/** How far past the end of what it stands on the weight may be, leg lengths. */
export const PAST_THE_END = 0;

export const PASSING_SOURCE =
  "317 captured steps by 15 people: at passing the hips are 9.3 % of a leg ahead of the standing ankle (4.2 to 13.6 %), and in all of them between its heel and toe";
export const CONTACT_SOURCE =
  "the poses of five captured walks, 22 steps: at contact the hips are at least 30 % of a leg from either ankle, between both";
export const STAND_SOURCE =
  "mechanics: whoever stands still has the centre of mass over the feet; masses by de Leva (1996), J Biomech 29:1223";

/**
 * The share of the body that must be marked for its centre of mass to be told: without trunk or both thighs
 * it would be a limb's. Common practice, no source; a pair of forearms and hands may lack.
 */
export const SHARE_NEEDED = 0.85;
/**
 * How far what is not marked may hang to the side of the rest: a foot's length, leg lengths.
 * Source: foot 0.152, leg 0.530 of stature (Drillis & Contini 1966)
 */
export const REST_HANGS_WITHIN = 0.287;

const ALWAYS = { yardsticks: COMMON_YARDSTICKS, level: "shows", unit: "leg" } as const;

export const weightSideMethod: Method = {
  check: "weight-side",
  asks: "Is the weight over what it stands on, seen from the side?",
  measures:
    "At passing it reads how far the hips are ahead of the standing foot's ankle, heel and toe; at contact, whether they are between the two feet; on the stand, whether the centre of mass of what is marked is over the feet.",
  formula: [
    "ahead = x(hips) − x(mark of the foot), forward positive, leg lengths",
    "passing: between heel and toe, and ahead of the ankle by a little, not over it",
    "contact: x(rear foot) < x(hips) < x(front foot)",
    "stand: x(rearmost sole) < x(centre of mass) < x(foremost sole)",
    `centre of mass = Σ share × x(part) / Σ share, asked once ${SHARE_NEEDED} of the body is marked`,
    "± = √( ±x(hips)² + ±x(mark)² )",
  ],
  limits: [
    {
      of: "passing: hips ahead of the standing ankle",
      fires: "outside",
      value: [AHEAD.from, AHEAD.to],
      source: PASSING_SOURCE,
      tripRate: 0,
      ...ALWAYS,
    },
    {
      of: "passing: hips ahead of the standing heel",
      fires: "below",
      value: PAST_THE_END,
      source: PASSING_SOURCE,
      tripRate: 0,
      ...ALWAYS,
    },
    {
      of: "passing: hips ahead of the standing toe",
      fires: "above",
      value: PAST_THE_END,
      source: PASSING_SOURCE,
      tripRate: 0,
      ...ALWAYS,
    },
    {
      of: "contact: hips ahead of the rear foot",
      fires: "below",
      value: PAST_THE_END,
      source: CONTACT_SOURCE,
      tripRate: 0,
      ...ALWAYS,
    },
    {
      of: "contact: hips ahead of the front foot",
      fires: "above",
      value: PAST_THE_END,
      source: CONTACT_SOURCE,
      tripRate: 0,
      ...ALWAYS,
    },
    {
      of: "stand: centre of mass ahead of the rearmost sole",
      fires: "below",
      value: PAST_THE_END,
      source: STAND_SOURCE,
      tripRate: null,
      ...ALWAYS,
    },
    {
      of: "stand: centre of mass ahead of the foremost sole",
      fires: "above",
      value: PAST_THE_END,
      source: STAND_SOURCE,
      tripRate: null,
      ...ALWAYS,
    },
    ...patternLimits("hips ahead of the standing ankle at passing", NEIGHBOURS.ahead),
  ],
  life: "When the feet pass, the hips are 9.3 % of a leg ahead of the standing ankle, over the middle of the foot (4.2 to 13.6 %), and in 317 of 317 captured steps between its heel and toe.",
};
