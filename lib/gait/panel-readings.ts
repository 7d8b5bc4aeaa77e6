import { type LegLength, type Mark, markOf, SIDES, type Side, type ViewMarks } from "../body";
import { distance, rootSumSquare } from "../geometry";
import { type Answer, answerOf, type NoReading, type Value } from "./answer";
import { hipHeight } from "./hip-height";
import type { WalkPanel } from "./walk";

/** Ids of what is read on one panel; whoever shows them has the words. */
export type PanelReadingId = "hip-height" | "knee-bend" | "foot-pitch" | "weight-foot-flat";

/** Yes or no, where a number would say less. */
export interface YesNo {
  readonly kind: "yes-no";
  readonly value: boolean;
}

/** One reading of a panel; `side` is null where it belongs to neither. */
export interface PanelReading {
  readonly id: PanelReadingId;
  readonly side: Side | null;
  readonly answer: Value | YesNo | NoReading;
}

/**
 * Beyond this a foot is not flat: the pitch that foot-roll allows at passing. Radians (10°).
 * Source: the board's own rule for the standing foot; captured walkers stand flat at passing.
 */
const FLAT_WITHIN = (10 * Math.PI) / 180;

/**
 * Everything that one panel alone can tell.
 *
 * Units:   hip height in leg lengths; knee bend and foot pitch in radians, bent and toe-up positive
 * Errors:  none; each reading answers for itself what it still needs
 */
export function panelReadings(panel: WalkPanel, leg: LegLength): readonly PanelReading[] {
  const marks = panel.marks.side;
  return [
    { id: "hip-height", side: null, answer: hipHeight(panel, leg) },
    ...SIDES.map(
      (side): PanelReading => ({ id: "knee-bend", side, answer: kneeBend(marks, side) }),
    ),
    ...SIDES.map(
      (side): PanelReading => ({ id: "foot-pitch", side, answer: footPitch(marks, side) }),
    ),
    { id: "weight-foot-flat", side: panel.weightOn, answer: weightFootFlat(panel) },
  ];
}

/**
 * Knee bend from the side: the thigh's lean less the shank's, so bent is positive and a knee that
 * bends the wrong way negative. Source: Winter (2009), knee angle = thigh angle − shank angle.
 */
export function kneeBend(marks: ViewMarks, side: Side): Answer {
  const needs = `the ${side} hip, knee and ankle marked in the side view`;
  const hip = markOf(marks, `${side}-hip`);
  const knee = markOf(marks, `${side}-knee`);
  const ankle = markOf(marks, `${side}-ankle`);
  if (hip === null || knee === null || ankle === null) return { kind: "cannot-tell", needs };
  const bend = turn(leanForward(hip, knee) - leanForward(knee, ankle));
  return answerOf(bend, rootSumSquare(slack(hip, knee), slack(knee, ankle)), "rad", needs);
}

/** Foot pitch from the side: heel to ball over the ground, or heel to toe; toe up is positive. */
export function footPitch(marks: ViewMarks, side: Side): Answer {
  const needs = `the ${side} heel and ball or toe marked in the side view`;
  const heel = markOf(marks, `${side}-heel`);
  const front = markOf(marks, `${side}-ball`) ?? markOf(marks, `${side}-toe`);
  if (heel === null || front === null) return { kind: "cannot-tell", needs };
  const pitch = Math.atan2(heel.y - front.y, front.x - heel.x);
  return answerOf(pitch, slack(heel, front), "rad", needs);
}

function weightFootFlat({ weightOn, marks }: WalkPanel): YesNo | NoReading {
  if (weightOn === null) return { kind: "cannot-tell", needs: "the side that carries the weight" };
  const pitch = footPitch(marks.side, weightOn);
  if (pitch.kind === "cannot-tell") return pitch;
  const away = Math.abs(pitch.value);
  if (Math.abs(away - FLAT_WITHIN) < pitch.plusMinus) {
    return { kind: "cannot-tell", needs: `the ${weightOn} heel and ball marked more exactly` };
  }
  return { kind: "yes-no", value: away <= FLAT_WITHIN };
}

/** How far a limb's lower end stands ahead of its upper end, from hanging straight. Radians. */
function leanForward(upper: Mark, lower: Mark): number {
  return Math.atan2(lower.x - upper.x, lower.y - upper.y);
}

/** ± of a line's direction: what its ends may move sideways, over its length. Radians. */
function slack(from: Mark, to: Mark): number {
  return rootSumSquare(from.precision, to.precision) / distance(from, to);
}

/** An angle brought into −π..π. */
function turn(angle: number): number {
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}
