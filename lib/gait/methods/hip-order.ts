import type { Method } from "../method";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/** By the trade each pose's hips stand clearly above or below the other's: no room. Leg lengths. */
export const IN_ORDER = 0;

/** By life, a pose's hips over another's, leg lengths. */
export const PASSING_OVER_DOWN = 0; // trips on 2.8 % of the captured steps
export const PASSING_OVER_CONTACT = -0.005; // trips on 1.6 %
export const DOWN_OVER_CONTACT = 0.02; // trips on 3.5 % when the down is taken at a quarter

/**
 * Heights that read as equal are equal: half of the last digit a height is shown with (0.1 %), in
 * leg lengths. Exact marks would otherwise be told that they stand 0.0 % too high.
 */
export const READS_AS_EQUAL = 0.0005;

/**
 * With a larger ± no order of heights that people walk in could be told, so what seems in order is not
 * called so, unless it is by more than the ±. Marks placed at the strip (± 3 % of a leg and less) give
 * ± 2.1 % by both hips in both views, ± 3.0 % in one view and ± 4.3 % by one hip, which still answers. Leg lengths.
 * Source: 317 captured steps of 15 people: in 95 % the up stands at most 5.7 % of a leg over the down
 */
export const VAGUE_BEYOND = 0.057;

const MEASURED = "317 steps of 72 captured walks by 15 people";

export const HIP_ORDER_SOURCES = {
  trade:
    "Williams, The Animator's Survival Kit (2001): down lowest, then contact, passing above contact, up highest",
  passingOverDown: `${MEASURED}: passing stands above the down in 97.2 %`,
  passingOverContact: `${MEASURED}: passing lies more than 0.5 % of a leg below contact in 1.6 %`,
  downOverContact: `${MEASURED}: a down stands more than 2 % of a leg above contact in 3.5 %`,
} as const;

const TRADE = {
  yardsticks: ["trade"],
  level: "shows",
  value: IN_ORDER,
  unit: "leg",
  source: HIP_ORDER_SOURCES.trade,
  tripRate: null,
} as const;
const LIFE = { yardsticks: ["life"], level: "shows", unit: "leg" } as const;

export const hipOrderMethod: Method = {
  check: "hip-order",
  asks: "Do the hips sink and rise in the order of a walk?",
  measures:
    "Reads the height of the hips over the ground at the contact, down, passing and up of each step, by both hips where both are marked and by both views where both have them, and holds one pose's against another's.",
  formula: [
    "h = height of the middle between the hips over the ground line, leg lengths",
    "rise = h(pose) − h(other pose of the same step)",
    "± = √( ±h(pose)² + ±h(other)² )",
    `less than ${READS_AS_EQUAL} apart reads as equal and is not remarked`,
  ],
  limits: [
    { of: "down over contact", fires: "above", ...TRADE },
    { of: "passing over contact", fires: "below", ...TRADE },
    { of: "up over passing", fires: "below", ...TRADE },
    {
      of: "passing over down",
      fires: "below",
      value: PASSING_OVER_DOWN,
      source: HIP_ORDER_SOURCES.passingOverDown,
      tripRate: 0.028,
      ...LIFE,
    },
    {
      of: "passing over contact",
      fires: "below",
      value: PASSING_OVER_CONTACT,
      source: HIP_ORDER_SOURCES.passingOverContact,
      tripRate: 0.016,
      ...LIFE,
    },
    {
      of: "down over contact",
      fires: "above",
      value: DOWN_OVER_CONTACT,
      source: HIP_ORDER_SOURCES.downOverContact,
      tripRate: 0.035,
      ...LIFE,
    },
    ...patternLimits("hips at down, passing or up over the contact's", NEIGHBOURS.hips),
  ],
  life: "The down lies 0.3 % of a leg below the contact, a few millimetres; the passing 2.3 % above it and the highest hips 2.7 %. Taken at the trade's even times, 92 % of captured steps break the trade's order: it is a style, and a good one, but not life.",
};
