import type { Grade, Method } from "../method";
import { YARDSTICKS } from "../walk";

/** How far one joint may stand at two heights, leg lengths; gravest first. */
export const HEIGHT_LIMITS: readonly Grade[] = [
  { level: "may-show", value: 0.1, tripRate: 0 },
  { level: "tidy", value: 0.04, tripRate: 0 },
];

export const VIEWS_SOURCE =
  "geometry: a joint has one height; the room for drawing is common practice, no source";

export const viewsMethod: Method = {
  check: "views",
  asks: "Do side view and front view show one and the same pose?",
  measures:
    "The height of every joint that a panel has marked in both views. The two must agree; the joint that differs most is told.",
  formula: ["apart = |height from the side − height from ahead|"],
  limits: HEIGHT_LIMITS.map(({ level, value, tripRate }) => ({
    of: "one joint's two heights",
    yardsticks: YARDSTICKS,
    level,
    fires: "above",
    value,
    unit: "leg",
    source: VIEWS_SOURCE,
    tripRate,
  })),
  life: null,
};
