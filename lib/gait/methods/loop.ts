import type { Grade, Method } from "../method";
import { YARDSTICKS } from "../walk";

/** How far any joint may be from where it was a stride before, worst first. Leg lengths. */
export const LOOP_GAPS: readonly Grade[] = [
  { level: "shows", value: 0.1, tripRate: 0.02 },
  { level: "may-show", value: 0.08, tripRate: 0.045 },
  { level: "tidy", value: 0.05, tripRate: 0.23 },
];

export const LOOP_SOURCE =
  "captured strides of 15 people: the worst joint lies more than 5 % of a leg from where it was in 23 %, more than 8 % in 4.5 %, more than 10 % in 2.0 %";

export const loopMethod: Method = {
  check: "loop",
  asks: "Does the walk come back to the pose that it began with?",
  measures:
    "Reads every joint that the first contact and the last of a whole stride both have marked in the side view, with the hips laid upon each other, and takes the worst. Asked only where the last pose repeats the first.",
  formula: [
    "gap(joint) = distance between p(last) and p(first)",
    "p = (x(joint) − x(hips), y(joint)), leg lengths, hips = the middle between both",
    "loop = the greatest gap of all joints",
    "± = root-sum-square of the marks' own, the hips' halved where both are marked",
  ],
  limits: LOOP_GAPS.map(({ level, value, tripRate }) => ({
    of: "worst joint after a stride, from the side",
    yardsticks: YARDSTICKS,
    level,
    fires: "above" as const,
    value,
    unit: "leg" as const,
    source: LOOP_SOURCE,
    tripRate,
  })),
  life: "After a stride the worst joint lies 3.4 % of a leg from where it was, 2.0 to 7.3 % in nine of ten strides; it is a wrist in 41 %, a toe in 29 %. A drawn cycle can close exactly.",
};
