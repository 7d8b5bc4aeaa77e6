import { KNEE_STRAIGHT_WITHIN } from "../../body";
import type { Method } from "../method";
import { YARDSTICKS } from "../walk";

/** How far a knee may bend the wrong way, radians: what passes as drawn straight. */
export const BENDS_BACK = KNEE_STRAIGHT_WITHIN;

export const KNEE_SOURCE =
  "Winter (2009), table A.1, Schwartz, Rozumalski & Trost (2008), J Biomech 41:1639: through the stride the knee is bent between −1 and 67°; in 155 captured panels none is bent back";

export const kneeMethod: Method = {
  check: "knee",
  asks: "Do the knees bend forward?",
  measures:
    "The knee's bend from the side at every pose: the thigh's lean less the shank's. Bent is positive, past straight is negative.",
  formula: [
    "bend = lean(hip, knee) − lean(knee, ankle)",
    "lean(a, b) = atan2(b ahead of a, a above b)",
  ],
  limits: [
    {
      of: "bend past straight",
      yardsticks: YARDSTICKS,
      level: "shows",
      fires: "above",
      value: BENDS_BACK,
      unit: "rad",
      source: KNEE_SOURCE,
      tripRate: 0,
    },
  ],
  life: "Real knees are bent between about 0 and 67° through a stride and hardly pass straight.",
};
