import type { Method } from "../method";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/** How far apart the feet stand across the walk, leg lengths. */
export const WIDTH = { from: 0.02, to: 0.25 } as const; // life: 0.110 on average; trips on 1.3 %

export const WIDTH_SOURCE =
  "317 captured steps by 15 people: the step is 11 % of a leg wide on average, and outside 2 to 25 % in 1.3 %";

export const widthMethod: Method = {
  check: "width",
  asks: "Do the feet stand as far apart as feet do, seen from the front?",
  measures:
    "From the front: where the foot stands that ends a step, beside where the one stands that carries it. Both are read at their passings by the ankle where that is marked, else at their contacts, else by ball, heel or toe.",
  formula: [
    "width = z of the right foot − z of the left foot",
    "z runs to the walker's right, in leg lengths; below 0 the feet cross",
  ],
  limits: [
    {
      of: "step width",
      yardsticks: ["trade", "life"],
      level: "may-show",
      fires: "outside",
      value: [WIDTH.from, WIDTH.to],
      unit: "leg",
      source: WIDTH_SOURCE,
      tripRate: 0.013,
    },
    ...patternLimits("step width", NEIGHBOURS.width),
  ],
  life: "Captured walkers' steps are 11.0 % of a leg wide (sd over 15 people 3.3 %), from 1.5 to 29.5 %.",
};
