import { type LegLength, otherSide, type Side } from "../body";
import type { NoReading } from "./answer";
import { clearlyBeyond } from "./beyond";
import { footPoints, isWholeFoot, lowest, needsFoot } from "./foot";
import { FLOAT_LIMIT } from "./methods/float";
import { FLAT_WITHIN } from "./methods/foot-roll";
import { footPitch } from "./readings/joint-angles";
import type { Step } from "./step";
import type { Study } from "./study";
import type { CommonYardstick, WalkPanel } from "./walk";

/** How a foot meets the ground: on its heel, flat, on its ball and toe, or not at all. */
export const FOOT_STATES = ["heel", "flat", "toe", "air"] as const;
export type FootState = (typeof FOOT_STATES)[number];

/** A foot's state in a pose, and whether the marks say so or only the panel's label. */
export interface FootTold {
  readonly kind: "value";
  readonly state: FootState;
  readonly by: "marks" | "label";
}

/**
 * Lowest point of a foot that is off the ground, leg lengths: one that bore would float. A swinging foot may
 * well be lower: its clearance is 2.1 ± 0.9 cm, so a low foot is not known to bear.
 */
export const OFF_THE_GROUND = FLOAT_LIMIT;

/**
 * How a foot meets the ground in a panel. The label says what the pose's name promises; the marks have the
 * last word where they are exact enough: on a foot that is clearly up, on the roll of one that bears,
 * and on the rear foot at the down, which is about to leave.
 *
 * Errors:  none; without a label that tells, and without marks, it answers "cannot-tell"
 */
export function footState(study: Study, panel: WalkPanel, side: Side): FootTold | NoReading {
  const up = panel.pose === "up" ? upState(study, panel) : null;
  return study.once(panel, bothStates, up)[side];
}

function bothStates(study: Study, panel: WalkPanel, up: FootState | null) {
  return {
    left: stateOf(study, panel, "left", up),
    right: stateOf(study, panel, "right", up),
  };
}

function stateOf(
  study: Study,
  panel: WalkPanel,
  side: Side,
  up: FootState | null,
): FootTold | NoReading {
  const named = byLabel(study, panel, side, up);
  const low = lowPoint(panel, side, study.leg);
  if (low === null) return named === null ? cannotTell(panel, side) : told(named, "label");
  if (clearlyBeyond(low.y, low.plusMinus, OFF_THE_GROUND)) return told("air", "marks");
  const isDown = low.y + low.plusMinus <= OFF_THE_GROUND;
  const mayBear = named !== "air" || (panel.pose === "down" && isDown);
  if (!mayBear) return told("air", "label");
  if (named === null && !isDown) {
    return { kind: "cannot-tell", needs: `the ${side} heel and toe marked more exactly` };
  }
  const rolled = byPitch(panel, side);
  if (rolled !== null) return told(rolled, "marks");
  return named === null ? cannotTell(panel, side) : told(named, "label");
}

const told = (state: FootState, by: FootTold["by"]): FootTold => ({ kind: "value", state, by });

function cannotTell({ pose, weightOn }: WalkPanel, side: Side): NoReading {
  const unsaid = weightOn === null && pose !== "breakdown" && pose !== "lead-in";
  return {
    kind: "cannot-tell",
    needs: unsaid ? "the side that carries the weight" : needsFoot(side),
  };
}

function lowPoint(panel: WalkPanel, side: Side, leg: LegLength) {
  if (leg.kind === "cannot-tell") return null;
  const points = footPoints(panel, side, leg);
  return isWholeFoot(points) ? lowest(points) : null;
}

/** The roll of a foot, where its pitch is known well enough. */
function byPitch({ marks }: WalkPanel, side: Side): FootState | null {
  const pitch = footPitch(marks.side, side);
  if (pitch.kind === "cannot-tell") return null;
  const { value, plusMinus } = pitch;
  if (clearlyBeyond(value, plusMinus, FLAT_WITHIN)) return "heel";
  if (clearlyBeyond(-value, plusMinus, FLAT_WITHIN)) return "toe";
  return Math.abs(value) + plusMinus <= FLAT_WITHIN ? "flat" : null;
}

/**
 * What a pose's name promises of its two feet. In life the down comes so soon (0.07 of the step) that the
 * foot that lands is still on its heel, and the other has not left.
 * Source: the phases of walking, Perry: loading response to 12 % of the stride, opposite toe-off at 12 %
 */
const CARRIES: Readonly<Record<CommonYardstick, { readonly down: FootState }>> = {
  trade: { down: "flat" },
  life: { down: "heel" },
};
const LEAVES: Readonly<Record<CommonYardstick, { readonly down: FootState }>> = {
  trade: { down: "air" },
  life: { down: "toe" },
};

function byLabel(
  { common }: Study,
  { pose, weightOn }: WalkPanel,
  side: Side,
  up: FootState | null,
): FootState | null {
  if (pose === "stand") return "flat";
  if (weightOn === null) return null;
  const carries = side === weightOn;
  if (pose === "contact") return carries ? "heel" : "toe";
  if (pose === "down") return (carries ? CARRIES : LEAVES)[common].down;
  if (pose === "passing") return carries ? "flat" : "air";
  if (pose === "up") return carries ? up : "air";
  return pose === "lead-in" && carries ? "flat" : null;
}

/** An up after the passing is up on its toe; before it, as in life, the foot is still flat. */
function upState({ steps, common }: Study, panel: WalkPanel): FootState {
  const step = stepAt(steps, panel);
  if (step === null || step.passing === null) return common === "trade" ? "toe" : "flat";
  return step.panels.indexOf(panel) > step.panels.indexOf(step.passing) ? "toe" : "flat";
}

/** The step that a panel belongs to. */
export function stepAt(steps: readonly Step[], panel: WalkPanel): Step | null {
  return steps.find(({ panels }) => panels.includes(panel)) ?? null;
}

/** Whether a step is carried by the other foot than this. */
export function isOtherFoot(step: Step, side: Side): boolean {
  return step.weightOn === otherSide(side);
}
