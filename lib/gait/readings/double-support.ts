import { otherSide } from "../../body";
import { rootSumSquare } from "../../geometry";
import { type Answer, answerOf } from "../answer";
import { stepFrames } from "../expected-frames";
import { footState } from "../foot-state";
import { REAR_LEAVES } from "../rear-leaves";
import type { Step } from "../step";
import type { Study } from "../study";
import { NO_NEXT } from "./between-feet";

const NEEDS = "the poses after the contact, and how the rear foot meets the ground in them";

/**
 * Double support: the share of a step in which both feet are down, from its contact to the moment the rear
 * foot leaves. The moment lies between the last pose in which that foot is down and the first in which it is
 * not; within, people's own moment is taken.
 *
 * Units:   a share of the step; ± what the poses and people leave open
 * Errors:  none; without the next contact, or a pose in which the rear foot has left, it answers "cannot-tell"
 * Source:  see `REAR_LEAVES`
 */
export function doubleSupport(study: Study, step: Step): Answer {
  return study.onceIn(step, readDoubleSupport);
}

function readDoubleSupport(study: Study, step: Step): Answer {
  const { weightOn, contact, panels } = step;
  const length = stepFrames(step);
  if (length === null || weightOn === null) return NO_NEXT;
  const rear = otherSide(weightOn);
  const told = panels.map((panel) => {
    const foot = footState(study, panel, rear);
    const share = (panel.frame - contact.frame) / length;
    return { share, state: foot.kind === "value" ? foot.state : null };
  });
  const first = told.findIndex(({ state }) => state === "air");
  const up = told[first];
  if (up === undefined) return { kind: "cannot-tell", needs: NEEDS };
  const last = told[first - 1];
  if (last === undefined) return answerOf(0, 0, "share", NEEDS); // it flew before this foot came down
  if (last.state === null) return { kind: "cannot-tell", needs: NEEDS };
  const at = Math.min(up.share, Math.max(last.share, REAR_LEAVES.at));
  const open = Math.max(up.share - at, at - last.share);
  return answerOf(at, Math.min(REAR_LEAVES.plusMinus, open), "share", NEEDS);
}

/**
 * Flight: the share of a step in which neither foot is down, by the poses in which both are up.
 *
 * Units:   a share of the step; ± half of what the poses around leave open
 * Errors:  none; without the next contact or with a foot that nothing tells it answers "cannot-tell"
 * Source:  none needed: it counts
 */
export function flightShare(study: Study, step: Step): Answer {
  const { weightOn, contact, next } = step;
  const length = stepFrames(step);
  if (length === null || weightOn === null || next === null) return NO_NEXT;
  const told = step.panels.map((panel) => {
    const feet = [weightOn, otherSide(weightOn)].map((side) => footState(study, panel, side));
    const share = (panel.frame - contact.frame) / length;
    const up = feet.every((foot) => foot.kind === "value" && foot.state === "air");
    const down = feet.some((foot) => foot.kind === "value" && foot.state !== "air");
    return { share, up, down };
  });
  if (told.some(({ up, down }) => !(up || down))) return { kind: "cannot-tell", needs: NEEDS };
  const first = told.findIndex(({ up }) => up);
  if (first < 0) return answerOf(0, 0, "share", NEEDS);
  const last = told.findLastIndex(({ up }) => up);
  const shareOf = (at: number) => told[at]?.share ?? 1;
  const least = shareOf(last) - shareOf(first);
  const most = shareOf(last + 1) - (first === 0 ? 0 : shareOf(first - 1));
  return answerOf((least + most) / 2, (most - least) / 2, "share", NEEDS);
}

/**
 * Stance: the share of the stride in which the foot is down that carries the first of two steps.
 *
 * Units:   a share of the stride; swing is what is left of 1
 * Errors:  none; it answers "cannot-tell" where the second step's double support does
 * Source:  stance lasts a step and the double support after it (Perry: 62 % of the stride)
 */
export function stanceShare(study: Study, first: Step, second: Step): Answer {
  const [one, two] = [stepFrames(first), stepFrames(second)];
  if (one === null || two === null || first.next !== second.contact) return NO_NEXT;
  const leaves = doubleSupport(study, second);
  if (leaves.kind === "cannot-tell") return leaves;
  const stride = one + two;
  const plusMinus = rootSumSquare((leaves.plusMinus * two) / stride);
  return answerOf((one + leaves.value * two) / stride, plusMinus, "share", NEEDS);
}
