import type { Grade, Method } from "../method";
import { YARDSTICKS } from "../walk";

/** How far a mark of the planted foot may travel, and between which poses that is asked. */
export interface SlideRule {
  readonly joint: "ball" | "heel";
  readonly from: "contact" | "down";
  /** Leg lengths, worst first. */
  readonly forward: readonly Grade[];
  readonly source: string;
}

/** Leg lengths, either mark. No captured step slid backward; the rest is room for the pencil. */
export const BACKWARD: readonly Grade[] = [{ level: "shows", value: 0.02, tripRate: 0 }];
export const BACKWARD_SOURCE = "317 captured steps by 15 people: none slid backward";

export const SLIDE_RULES: readonly SlideRule[] = [
  {
    joint: "ball",
    from: "down",
    forward: [
      { level: "shows", value: 0.05, tripRate: 0 },
      { level: "may-show", value: 0.04, tripRate: 0.035 },
    ],
    source:
      "317 captured steps by 15 people: from down to passing the ball moves more than 5 % of a leg in none, more than 4 % in 3.5 %",
  },
  {
    joint: "heel",
    from: "contact",
    forward: [{ level: "shows", value: 0.05, tripRate: 0 }],
    source:
      "317 captured steps by 15 people: from contact to passing the heel moves more than 5 % of a leg in none",
  },
];

export const slideMethod: Method = {
  check: "slide",
  asks: "Does the foot that carries stay where it was put down?",
  measures:
    "Follows the ball of the foot that carries from the down to passing, and its heel from the contact to passing, along the ground. That ball and ankle come forward while the foot rolls over its heel, between contact and flat, is honest and not asked about. Where places were solved from the planted feet, the ball is held against the heel of its own foot, and the heel against the other foot and places set by hand.",
  formula: [
    "travel = x(mark, later panel) − x(mark, first panel), forward positive",
    "x = place of the panel on the ground + the mark in the panel / leg",
    "± = √( ±first² + ±later² )",
    "the farthest panel of the stance counts; x and travel in leg lengths",
  ],
  limits: [
    ...SLIDE_RULES.flatMap(({ joint, from, forward, source }) =>
      forward.map(
        (grade) =>
          ({
            of: `${joint}, forward, ${from} to passing`,
            yardsticks: YARDSTICKS,
            fires: "above",
            unit: "leg",
            source,
            ...grade,
          }) as const,
      ),
    ),
    ...BACKWARD.map(
      (grade) =>
        ({
          of: "ball or heel, backward",
          yardsticks: YARDSTICKS,
          fires: "above",
          unit: "leg",
          source: BACKWARD_SOURCE,
          ...grade,
        }) as const,
    ),
  ],
  life: "From the down to passing the ball moves 1.5 % of a leg on average, up to 3.5 % in 95 % of captured steps; from contact to passing the heel moves 1.4 %, at most 4.1 %. Part of that is the noise of the capture. None slid backward.",
};
