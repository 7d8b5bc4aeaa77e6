import { type LegLength, otherSide, type Side } from "../body";
import type { NoReading } from "./answer";
import { isBallUp } from "./ball-up";
import { clearlyBeyond } from "./beyond";
import { footPoints, isWholeFoot, lowest, needsFoot } from "./foot";
import { FLOAT_LIMIT } from "./methods/float";
import { FLAT_WITHIN } from "./methods/foot-roll";
import { footPitch, footPitchTo } from "./readings/joint-angles";
import type { Step } from "./step";
import type { Study } from "./study";
import type { CommonYardstick, WalkPanel } from "./walk";

/**
 * How a foot meets the ground, in the order of its roll: on its heel, flat, with its heel up and its ball still
 * down, on its toe alone, or not at all.
 */
export const FOOT_STATES = ["heel", "flat", "ball", "toe", "air"] as const;
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
  const stand = study.walk.panels.find(({ pose }) => pose === "stand") ?? null;
  return study.once(panel, bothStates, up, stand)[side];
}

function bothStates(study: Study, panel: WalkPanel, up: FootState | null, stand: WalkPanel | null) {
  return {
    left: stateOf(study, panel, "left", { up, stand }),
    right: stateOf(study, panel, "right", { up, stand }),
  };
}

/** What a foot's state goes by beside its own panel. */
interface Beside {
  readonly up: FootState | null;
  readonly stand: WalkPanel | null;
}

function stateOf(
  study: Study,
  panel: WalkPanel,
  side: Side,
  { up, stand }: Beside,
): FootTold | NoReading {
  const named = byLabel(study, panel, side, up);
  const low = lowPoint(panel, side, study.leg);
  if (low === null) return named === null ? cannotTell(panel, side) : told(named, "label");
  if (clearlyBeyond(low.y, low.plusMinus, OFF_THE_GROUND)) return told("air", "marks");
  const isDown = !clearlyBeyond(low.y + low.plusMinus, 0, OFF_THE_GROUND);
  const mayBear = named !== "air" || (panel.pose === "down" && isDown);
  if (!mayBear) return told("air", "label");
  if (named === null && !isDown) {
    return { kind: "cannot-tell", needs: `the ${side} heel and toe marked more exactly` };
  }
  const rolled = byPitch(study, panel, side, stand);
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

/**
 * The roll of a foot, where its pitch is known well enough. With its heel up it is on its ball, as long as nothing
 * shows that the ball is up too; with its ball up it turns over its toe, and so its pitch is that of heel to toe.
 */
function byPitch(
  { leg }: Study,
  panel: WalkPanel,
  side: Side,
  stand: WalkPanel | null,
): FootState | null {
  const pitch = footPitch(panel.marks.side, side);
  if (pitch.kind === "cannot-tell") return null;
  const { value, plusMinus } = pitch;
  if (clearlyBeyond(value, plusMinus, FLAT_WITHIN)) return "heel";
  const onToe = isBallUp(panel, side, { leg, stand }) && isPitched(panel, side);
  if (onToe) return "toe";
  if (clearlyBeyond(-value, plusMinus, FLAT_WITHIN)) return "ball";
  return clearlyBeyond(Math.abs(value) + plusMinus, 0, FLAT_WITHIN) ? null : "flat";
}

/** Whether the heel is up, seen from the toe. */
function isPitched({ marks }: WalkPanel, side: Side): boolean {
  const pitch = footPitchTo(marks.side, side, "toe");
  return pitch.kind === "value" && clearlyBeyond(-pitch.value, pitch.plusMinus, FLAT_WITHIN);
}

/**
 * What a pose's name promises of its two feet. In life the down comes so soon (0.07 of the step) that the
 * foot that lands is still on its heel, and the other has not left. No pose's name promises a foot on its toe alone.
 * Source: the phases of walking, Perry: loading response to 12 % of the stride, opposite toe-off at 12 %
 */
const CARRIES: Readonly<Record<CommonYardstick, { readonly down: FootState }>> = {
  trade: { down: "flat" },
  life: { down: "heel" },
};
const LEAVES: Readonly<Record<CommonYardstick, { readonly down: FootState }>> = {
  trade: { down: "air" },
  life: { down: "ball" },
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
  if (pose === "contact") return carries ? "heel" : "ball";
  if (pose === "down") return (carries ? CARRIES : LEAVES)[common].down;
  if (pose === "passing") return carries ? "flat" : "air";
  if (pose === "up") return carries ? up : "air";
  return pose === "lead-in" && carries ? "flat" : null;
}

/** An up after the passing is up on its ball; before it, as in life, the foot is still flat. */
function upState({ steps, common }: Study, panel: WalkPanel): FootState {
  const step = stepAt(steps, panel);
  if (step === null || step.passing === null) return common === "trade" ? "ball" : "flat";
  return step.panels.indexOf(panel) > step.panels.indexOf(step.passing) ? "ball" : "flat";
}

/** The step that a panel belongs to. */
export function stepAt(steps: readonly Step[], panel: WalkPanel): Step | null {
  return (stepsByPanel.get(steps) ?? keptByPanel(steps)).get(panel) ?? null;
}

type ByPanel = ReadonlyMap<WalkPanel, Step>;

/** Of a walk's steps, for as long as somebody holds their list. */
const stepsByPanel = new WeakMap<readonly Step[], ByPanel>();

function keptByPanel(steps: readonly Step[]): ByPanel {
  const byPanel = new Map<WalkPanel, Step>();
  for (const step of steps) for (const panel of step.panels) byPanel.set(panel, step);
  stepsByPanel.set(steps, byPanel);
  return byPanel;
}

/** Whether a step is carried by the other foot than this. */
export function isOtherFoot(step: Step, side: Side): boolean {
  return step.weightOn === otherSide(side);
}
