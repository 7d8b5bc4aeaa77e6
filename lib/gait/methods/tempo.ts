import { OFF_THE_GROUND } from "../foot-state";
import type { Method } from "../method";
import { NEIGHBOURS, patternLimits } from "./neighbouring-steps";

/** Leg lengths: no captured step is shorter or longer. */
export const STEP_LENGTH = { from: 0.55, to: 1.05 } as const; // life: 0.77 on average, 0.59 to 1.04
export const STEP_LENGTH_SOURCE =
  "317 captured steps by 15 people: 77 % of a leg long on average, none outside 55 to 105 %";

/** From here on people run. */
export const RUNS_FROM = 0.5;
export const RUNS_SOURCE =
  "Alexander (1989), Physiol Rev 69:1199: people change from walking to running at a Froude number of about 0.5";

export const FLIGHT_SOURCE =
  "a walk always has a foot on the ground (Perry's phases: single support or double); no captured foot that bears stands more than 2 % of a leg above it (317 steps)";

/** How far the ground may go by otherwise than the feet are drawn, as a share of the steps drawn. */
export const SKATES_BEYOND = 0.05;
export const SKATES_SOURCE =
  "common practice, no source: the same as a planted foot may slip, 5 % of a leg in a step of about one";

const BOTH = ["trade", "life"] as const;

export const tempoMethod: Method = {
  check: "tempo",
  asks: "Are the steps as long and as fast as a walk's, and does the ground go by as they are drawn?",
  measures:
    "Each step's length between the feet as they stand, and its speed where the character has a stature. The poses after the passing are looked at for a foot on the ground. The ground that goes by, by the advance or by the panels' places, is held against the steps as each contact draws them, from the rear foot's heel before it rose (its ball, less the foot) to the heel that lands.",
  formula: [
    "Froude = v² · L / g; v leg lengths a second, L the leg in metres, g = 9.81 m/s²",
    "skating = (ground that goes by ÷ steps as drawn) − 1, over all steps that can be read",
    "drawn step = front heel − (rear ball − rear foot's heel to ball); good to 3 % of itself",
  ],
  limits: [
    {
      of: "step length",
      yardsticks: BOTH,
      level: "may-show",
      fires: "outside",
      value: [STEP_LENGTH.from, STEP_LENGTH.to],
      unit: "leg",
      source: STEP_LENGTH_SOURCE,
      tripRate: 0,
    },
    {
      of: "Froude number, where the stature is known",
      yardsticks: BOTH,
      level: "may-show",
      fires: "above",
      value: RUNS_FROM,
      unit: "number",
      source: RUNS_SOURCE,
      tripRate: 0,
    },
    {
      of: "both feet over the ground, after the passing",
      yardsticks: BOTH,
      level: "may-show",
      fires: "above",
      value: OFF_THE_GROUND,
      unit: "leg",
      source: FLIGHT_SOURCE,
      tripRate: null,
    },
    {
      of: "the ground that goes by against the steps as drawn, either way",
      yardsticks: BOTH,
      level: "shows",
      fires: "above",
      value: SKATES_BEYOND,
      unit: "share",
      source: SKATES_SOURCE,
      tripRate: null,
    },
    ...patternLimits("step length, symmetry index", NEIGHBOURS.length),
  ],
  life: "Captured walkers take steps of 0.77 of a leg (0.59 to 1.04) at Froude numbers of 0.06 to 0.36. Their ankles at contact are 0.9 of the step apart; read as above, a contact draws 0.96 to 1.03 of the step.",
};
