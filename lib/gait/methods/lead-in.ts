import type { Method } from "../method";
import { YARDSTICKS } from "../walk";
import { BACKWARD, SLIDE_RULES } from "./slide";

/** How far the foot that stays put may come forward, leg lengths: what passes of any planted foot. */
export const CREEPS_FORWARD =
  SLIDE_RULES.flatMap(({ forward }) => forward).find(({ level }) => level === "may-show")?.value ??
  0.04;
/** And how far back. Leg lengths. */
export const CREEPS_BACK = BACKWARD[0]?.value ?? 0.02;
export const CREEPS_SOURCE =
  "as of any planted foot: 317 captured steps by 15 people, the ball moves more than 4 % of a leg in 3.5 %, back by 2 % in none";

/** How far the hips are to come toward the foot that stays before the other one lifts. Leg lengths. */
export const SHIFTS_FROM = 0.01;
export const SHIFT_SOURCE =
  "common practice: the weight goes over one foot before the other can lift; 1 % as at passing, where 317 captured steps by 15 people have the hips 3.1 % of a leg toward the standing foot on average";

/** Lead-ins from the first contact on. A loop begins there, and would lead in again each time round. */
export const IN_THE_LOOP = 0;
export const LOOP_SOURCE = "common practice, no source";

export const leadInMethod: Method = {
  check: "lead-in",
  asks: "Does the body go over one foot before the other lifts off, outside the loop?",
  measures:
    "Follows the front of the foot that stays from the stand to the lead-in and on to the first contact, along the ground, where these panels' places were set by hand; on the spot that is not asked. From the front it reads how far the middle of the hips comes toward that foot, from the stand to the first lead-in that has the other foot off the ground, or to the last one. And it looks whether a lead-in stands at the first contact or after it.",
  formula: [
    "travel = x(ball and toe of the foot that stays, later panel) − x(the same, stand), their mean",
    "shift = c(lead-in) − c(stand)",
    "c = z(middle of the hips) − z(the foot that stays, mean of its marks), positive toward it",
    "z = place across the walk; x, z, travel and shift in leg lengths",
    "± = root-sum-square of every mark's own, as each counts in its mean",
  ],
  limits: [
    {
      of: "the foot that stays, forward, stand to first contact",
      yardsticks: YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: CREEPS_FORWARD,
      unit: "leg",
      source: CREEPS_SOURCE,
      tripRate: null,
    },
    {
      of: "the foot that stays, backward, stand to first contact",
      yardsticks: YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: CREEPS_BACK,
      unit: "leg",
      source: CREEPS_SOURCE,
      tripRate: null,
    },
    {
      of: "hips shifted toward the foot that stays, before the other lifts",
      yardsticks: YARDSTICKS,
      level: "may-show",
      fires: "below",
      value: SHIFTS_FROM,
      unit: "leg",
      source: SHIFT_SOURCE,
      tripRate: null,
    },
    {
      of: "lead-ins at the first contact or after it",
      yardsticks: YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: IN_THE_LOOP,
      unit: "poses",
      source: LOOP_SOURCE,
      tripRate: null,
    },
  ],
  life: null,
};
