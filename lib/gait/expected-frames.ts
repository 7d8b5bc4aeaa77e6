import { gathered } from "../gathered";
import { type Frame, nearestDrawn, STEP_POSES, type StepPose } from "../motion";
import { POSE_SHARES } from "./pose-shares";
import type { Step } from "./step";
import type { CommonYardstick, Walk, WalkPanel } from "./walk";

/** A panel of a step, with the drawn frame nearest to where the yardstick puts its pose. */
export interface Timed {
  readonly panel: WalkPanel;
  readonly expected: Frame;
}

/**
 * Where the yardstick puts the poses of a step, its two contacts staying where they are. Half-way
 * between two drawn frames either will do, and the one nearer to the drawing is taken.
 *
 * @param rule a step whose own shares are expected instead; poses that it lacks are passed over
 *
 * Shapes:  the contact, the named poses that were drawn, the next contact; in the panels' order
 * Errors:  none; null while the step has no next contact or its frames do not rise
 */
export function expectedFrames(
  step: Step,
  yardstick: CommonYardstick,
  { exposure }: Pick<Walk, "exposure">,
  rule: Step | null = null,
): readonly Timed[] | null {
  const { contact, next } = step;
  const length = stepFrames(step);
  if (next === null || length === null) return null;
  const inner = gathered(STEP_POSES, (pose): Timed[] => {
    const panel = step[pose];
    if (panel === null || panel === contact) return [];
    const share = rule === null ? commonShare(pose, step, yardstick) : shareIn(rule, pose);
    if (share === null) return [];
    const moment = contact.frame + share * length;
    return [{ panel, expected: nearestTo(panel.frame, moment, exposure) }];
  });
  const order = (timed: Timed) => step.panels.indexOf(timed.panel);
  return [
    { panel: contact, expected: contact.frame },
    ...inner.toSorted((a, b) => order(a) - order(b)),
    { panel: next, expected: next.frame },
  ];
}

/** Frames from a step's contact to the next, or null where that is not above 0. */
export function stepFrames({ contact, next }: Step): number | null {
  if (next === null) return null;
  const frames = next.frame - contact.frame;
  return Number.isFinite(frames) && frames > 0 ? frames : null;
}

function commonShare(pose: StepPose, step: Step, yardstick: CommonYardstick): number | null {
  return isStylised(pose, step, yardstick) ? null : POSE_SHARES[yardstick][pose];
}

/** When a step has a pose, as a share of it; null where it has not, or does not end. */
export function shareIn(rule: Step, pose: StepPose): number | null {
  const frames = stepFrames(rule);
  const panel = rule[pose];
  return frames === null || panel === null ? null : (panel.frame - rule.contact.frame) / frames;
}

/** An up drawn after the passing is the trade's: life has its highest hips before, and no rule here. */
function isStylised(
  pose: StepPose,
  { panels, passing, up }: Step,
  yardstick: CommonYardstick,
): boolean {
  if (pose !== "up" || yardstick !== "life" || passing === null || up === null) return false;
  return panels.indexOf(up) > panels.indexOf(passing);
}

function nearestTo(drawn: Frame, moment: number, exposure: Walk["exposure"]): Frame {
  const late = nearestDrawn(moment, exposure);
  const early = late - exposure;
  const tied = Math.abs(moment - early - (late - moment)) < 1e-9;
  return tied && Math.abs(drawn - early) < Math.abs(drawn - late) ? early : late;
}
