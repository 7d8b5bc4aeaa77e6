import type { Method } from "../method";
import { YARDSTICKS } from "../walk";

/** Leg lengths. Room for the pencil: nobody's foot goes through the floor. */
export const SINK_LIMIT = 0.02;

/**
 * Leg lengths, for the ball and toe of a foot that peels: a foot drawn in one piece, heel up, has its
 * tip in the ground where a real one bends. The stiff feet of the captured walks reach 2.2 % beyond
 * their ± of 3 % there, and nothing elsewhere (22 steps of five walks).
 */
export const PEELING_LIMIT = 0.03;
export const PEELING = 0.02; // heel over tip, leg lengths: what foot-roll takes for a heel that is up

export const SINK_SOURCE =
  "317 captured steps by 15 people: with soles known to 3 % of a leg, no foot that is not peeling lies more than 2 % under the ground";

export const sinkMethod: Method = {
  check: "sink",
  asks: "Does a foot go through the ground?",
  measures:
    "Reads heel, ball and toe of both feet in every panel, whether they carry or swing, and takes the deepest. The tip of a foot that peels off gets more room: drawn in one piece it dips where a real foot bends.",
  formula: [
    "sink = −y(mark), the deepest of heel, ball and toe",
    "y = height over the ground line, leg lengths",
    `peeling: y(heel) − y(mark) > ${PEELING}`,
    "± = that of the mark",
  ],
  limits: [
    {
      of: "any mark of a foot, under the ground",
      yardsticks: YARDSTICKS,
      level: "shows",
      fires: "above",
      value: SINK_LIMIT,
      unit: "leg",
      source: SINK_SOURCE,
      tripRate: 0,
    },
    {
      of: "ball or toe of a foot whose heel is up, under the ground",
      yardsticks: YARDSTICKS,
      level: "shows",
      fires: "above",
      value: PEELING_LIMIT,
      unit: "leg",
      source:
        "the poses of five captured walks, 22 steps: the tip of a stiff, peeling foot reaches 2.2 % of a leg beyond its ± of 3 %",
      tripRate: 0,
    },
  ],
  life: "Nobody's foot goes through the floor. The captured soles are points of a model: without their ± of 3 % of a leg a third of them would seem to sink at the down.",
};
