import type { Method } from "../method";
import { YARDSTICKS } from "../walk";

/** How much farther than thigh and shank together reach an ankle may be from its hip. Leg lengths. */
export const BEYOND_REACH = 0.01;

export const REACH_SOURCE =
  "geometry: a leg is no longer than its bones; in 155 captured panels, whose bones read up to 2.6 % long, the ankle is at most 0.4 % of a leg beyond them";

export const reachMethod: Method = {
  check: "reach",
  asks: "Can the leg reach from its hip to its foot?",
  measures:
    "From the side, how far hip and ankle lie apart, with the depth that the front view adds where it has both marked, against thigh and shank as the stand has them, or their medians over the poses.",
  formula: [
    "beyond = |hip ankle| − (T + S)",
    "T, S: thigh and shank of the stand, the mean of left and right; without a stand the medians",
  ],
  limits: [
    {
      of: "hip to ankle over thigh and shank",
      yardsticks: YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: BEYOND_REACH,
      unit: "leg",
      source: REACH_SOURCE,
      tripRate: 0,
    },
  ],
  life: "No captured leg reaches more than 0.4 % of a leg beyond its bones.",
};
