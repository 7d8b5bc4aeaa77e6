import type { Method } from "../method";
import { YARDSTICKS } from "../walk";

/** Leg lengths. Room for the pencil: a captured foot that bears stands on the ground. */
export const FLOAT_LIMIT = 0.02;
export const FLOAT_SOURCE =
  "317 captured steps by 15 people: with soles known to 3 % of a leg, no bearing foot stands more than 2 % above the ground";

export const floatMethod: Method = {
  check: "float",
  asks: "Does a foot that bears weight stand on the ground?",
  measures:
    "Reads the lowest mark of every foot that bears weight: of both feet on the stand and at a contact, else of the one that carries.",
  formula: [
    "float = lowest of y(heel), y(ball), y(toe)",
    "y = height over the ground line, leg lengths",
    "± = that of the lowest mark",
  ],
  limits: [
    {
      of: "lowest mark of a bearing foot, above the ground",
      yardsticks: YARDSTICKS,
      level: "shows",
      fires: "above",
      value: FLOAT_LIMIT,
      unit: "leg",
      source: FLOAT_SOURCE,
      tripRate: 0,
    },
  ],
  life: "A bearing foot stands on the ground. Captured soles are known to ± 3 % of a leg; within that, none floats.",
};
