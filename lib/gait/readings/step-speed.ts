import { requirePositive } from "../../require";
import { type Answer, answerOf, type NoReading } from "../answer";
import { stepFrames } from "../expected-frames";
import { froude } from "../froude";
import type { Step } from "../step";
import type { Study } from "../study";
import { NO_NEXT, stepLength } from "./between-feet";

/** Speed over a step: its length over its time. Leg lengths a second; ± the length's. */
export function stepSpeed(study: Study, step: Step): Answer {
  const seconds = stepSeconds(study, step);
  const length = stepLength(study, step);
  if (seconds.kind === "cannot-tell") return seconds;
  if (length.kind === "cannot-tell") return length;
  const { value, plusMinus } = length;
  return answerOf(value / seconds.value, plusMinus / seconds.value, "leg/s", NO_NEXT.needs);
}

/** How long a step takes, contact to contact. Seconds, exact as its frames are. */
export function stepSeconds({ walk }: Study, step: Step): Answer {
  const frames = stepFrames(step);
  if (frames === null) return NO_NEXT;
  return answerOf(frames / walk.framesPerSecond, 0, "seconds", NO_NEXT.needs);
}

/** What is told in metres needs the character's size. */
const NO_STATURE: NoReading = {
  kind: "cannot-tell",
  needs: "the character's stature in metres, from the brief",
};

/** The leg in metres, or null while the character has no stature. */
export function legMetres({ walk }: Study): number | null {
  const { statureMetres, legShare } = walk.build;
  if (statureMetres === null) return null;
  requirePositive("legMetres", { statureMetres, legShare });
  return statureMetres * legShare;
}

/** Speed over a step in metres a second. */
export function stepMetresPerSecond(study: Study, step: Step): Answer {
  const leg = legMetres(study);
  if (leg === null) return NO_STATURE;
  const speed = stepSpeed(study, step);
  if (speed.kind === "cannot-tell") return speed;
  return answerOf(speed.value * leg, speed.plusMinus * leg, "m/s", NO_NEXT.needs);
}

/**
 * Froude number v²/(gL) of a step.
 *
 * Units:   a pure number; ± twice the speed's share, since the speed is squared
 * Errors:  none; without a stature it answers "cannot-tell": in leg lengths alone gravity has no size
 * Source:  see `froude`
 */
export function stepFroude(study: Study, step: Step): Answer {
  const leg = legMetres(study);
  if (leg === null) return NO_STATURE;
  const speed = stepMetresPerSecond(study, step);
  if (speed.kind === "cannot-tell") return speed;
  const { value, plusMinus } = speed;
  if (!(value > 0)) return { kind: "cannot-tell", needs: "a step that goes forward" };
  const number = froude(value, leg);
  return answerOf(number, (2 * number * plusMinus) / value, "number", NO_NEXT.needs);
}
