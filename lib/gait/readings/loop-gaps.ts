import { JOINTS, type JointName } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { type Answer, answerOf } from "../answer";
import { greatestFirst } from "../beyond";
import { hipsAlong, ONE_HIP_ALONG } from "../hips-along";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/** What two contacts need before one can be laid on the other. */
export const LOOP_NEEDS = "the hips and the feet marked at the first contact and the last";

/** How far a joint of the last pose lies from where the first has it. Leg lengths. */
export interface LoopGap {
  readonly joint: JointName;
  readonly value: number;
  readonly plusMinus: number;
}

/**
 * How far each joint jumps when a loop begins again: its last pose laid upon its first by the hips.
 *
 * Shapes:  one gap for each joint that both poses have in the side view, in the order of JOINTS
 * Units:   leg lengths, along the ground from the hips and up from the ground line
 * Errors:  none; null where a pose has no hip to be laid on the other by
 * Source:  ± is the root-sum-square of both joints' and both hips' own
 */
export function loopGaps(
  study: Study,
  first: WalkPanel,
  last: WalkPanel,
): readonly LoopGap[] | null {
  const hips = hipsAlong(study, first, ONE_HIP_ALONG.contact);
  const later = hipsAlong(study, last, ONE_HIP_ALONG.contact);
  if (hips === null || later === null) return null;
  return gathered(JOINTS, (joint): LoopGap[] => {
    const [was, is] = [study.seen(first, joint), study.seen(last, joint)];
    if (was === null || is === null) return [];
    const value = Math.hypot(is.x - later.x - (was.x - hips.x), is.y - was.y);
    const plusMinus = rootSumSquare(was.plusMinus, is.plusMinus, hips.plusMinus, later.plusMinus);
    return Number.isFinite(value) && Number.isFinite(plusMinus)
      ? [{ joint, value, plusMinus }]
      : [];
  });
}

/**
 * The loop gap of a stride: the joint that jumps furthest between its last contact and its first.
 *
 * Units:   leg lengths
 * Errors:  none; without a leg length, a hip, or any joint that both contacts have, it answers "cannot-tell"
 * Source:  as for each joint's gap
 */
export function loopGap(study: Study, first: Step, { next }: Step): Answer {
  if (study.leg.kind === "cannot-tell") return study.leg;
  const gaps = next === null ? null : loopGaps(study, first.contact, next);
  const worst = gaps?.toSorted((a, b) => greatestFirst(a.value, b.value))[0];
  if (worst === undefined) return { kind: "cannot-tell", needs: LOOP_NEEDS };
  return answerOf(worst.value, worst.plusMinus, "leg", LOOP_NEEDS);
}
