import { isStepPose } from "../../motion";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { leadInMoment, poseMoment } from "./pose-moment";
import type { Moment } from "./posed-legs";

/** What a moment is asked for. */
export interface Timed {
  /** Leg lengths; null leaves the published step as it is. */
  readonly stepLength: number | null;
  /**
   * `label`: as the pose's name has it. `frame`: life's down and up stand where their frames are, since
   * the highest hips come anywhere between 0.40 and 0.83 of a step.
   */
  readonly by: "label" | "frame";
}

/**
 * The moment of the published step for a panel. A breakdown has the moment between the named poses
 * about it that its frame has.
 */
export function momentOf(study: Study, panel: WalkPanel, { stepLength, by }: Timed): Moment {
  const { pose } = panel;
  if (pose === "lead-in") return leadInMoment(stepLength);
  const named = isStepPose(pose) ? poseMoment(pose, study.yardstick, stepLength) : null;
  const floats = pose === "down" || pose === "up";
  if (named !== null && !(floats && by === "frame" && study.common === "life")) return named;
  const share = shareByFrame(study, panel);
  if (share !== null) return { share, stepLength, hips: null };
  return named ?? poseMoment("passing", study.yardstick, stepLength);
}

/** A panel's share of its step, by its frame between the contacts and the passing; null without those. */
function shareByFrame(study: Study, { frame, id }: WalkPanel): number | null {
  const step = study.steps.find(({ panels }) => panels.some((one) => one.id === id));
  if (step?.next == null) return null;
  const anchors = [
    { frame: step.contact.frame, share: 0 },
    ...(step.passing === null ? [] : [{ frame: step.passing.frame, share: PASSING }]),
    { frame: step.next.frame, share: 1 },
  ];
  const before = anchors.findLast((anchor) => anchor.frame <= frame);
  const after = anchors.find((anchor) => anchor.frame > frame);
  if (before === undefined || after === undefined) return null;
  const along = (frame - before.frame) / (after.frame - before.frame);
  return before.share + along * (after.share - before.share);
}

const PASSING = poseMoment("passing", "life", null).share;
