import type { Grade, Method, MethodLimit } from "../method";
import { COMMON_YARDSTICKS } from "../walk";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/** One question about the hips at passing, seen from the front; limits worst first, leg lengths. */
export interface FrontRule {
  readonly id: "distance" | "shift" | "move";
  readonly of: string;
  readonly limits: readonly Grade[];
  readonly source: string;
}

export const FRONT_RULES: readonly FrontRule[] = [
  {
    id: "distance",
    of: "hips beside the standing ankle at passing",
    limits: [{ level: "may-show", value: 0.08, tripRate: 0.003 }],
    source:
      "317 captured steps by 15 people: at passing the hips are more than 8 % of a leg beside the standing ankle in 0.3 %",
  },
  {
    id: "shift",
    of: "hips shifted away from the standing foot at passing",
    limits: [
      { level: "shows", value: 0.02, tripRate: 0.009 },
      { level: "may-show", value: 0.01, tripRate: 0.017 },
    ],
    source:
      "317 captured steps by 15 people: at passing the hips are shifted away from the standing foot by more than 2 % of a leg in 0.9 %, by more than 1 % in 1.7 %",
  },
  {
    id: "move",
    of: "hips moving away from the receiving foot, contact to passing",
    limits: [{ level: "may-show", value: 0.01, tripRate: 1 / 22 }], // of 22 steps of five captured walks
    source:
      "the poses of five captured walks, 22 steps: between contact and passing the hips move 4.2 % of a leg toward the foot that receives them, away from it in one",
  },
];

export const weightFrontMethod: Method = {
  check: "weight-front",
  asks: "Do the hips come over the foot that carries, seen from the front?",
  measures:
    "Reads the middle between the hips in the front view at contact and passing, against the foot that carries and the middle between the feet as they stand: the one that carries, and the other at the contacts before and after.",
  formula: [
    "distance = | z(hips) − z(standing ankle) |",
    "shift = −( z(hips) − ½ (z(standing foot) + z(other foot, where it stood)) )",
    "move = −( z(hips, passing) − z(hips, contact) )",
    "z = place across the walk, positive toward the foot that carries, leg lengths",
    "± = √( Σ ± of every mark read, squared )",
  ],
  limits: [
    ...FRONT_RULES.flatMap(({ of, limits, source }) =>
      limits.map(
        (grade): MethodLimit => ({
          of,
          yardsticks: COMMON_YARDSTICKS,
          fires: "above",
          unit: "leg",
          source,
          ...grade,
        }),
      ),
    ),
    ...patternLimits("hips shifted toward the standing foot at passing", NEIGHBOURS.shift),
    ...patternLimits(
      "hips moved toward the foot that receives them, contact to passing",
      NEIGHBOURS.move,
    ),
  ],
  life: "The hips shift about half-way from the middle toward the standing foot: 3.1 % of a leg (95 % of steps: up to 5.4 %). They end 2.4 % inside its ankle, at the outermost 8.6 %.",
};
