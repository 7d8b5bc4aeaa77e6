import { SIDES, type Side } from "../body";
import type { NoReading } from "./answer";
import { stepFrames } from "./expected-frames";
import { type FootState, type FootTold, footState, isOtherFoot, stepAt } from "./foot-state";
import { REAR_LEAVES } from "./rear-leaves";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";

/** One foot from one panel to the next, or to the moment between them at which it changes. */
export interface FootSpan {
  readonly side: Side;
  /** The panel that it begins with. */
  readonly panel: string;
  /** Frames, counted from 1; the end may lie between two. */
  readonly from: number;
  readonly to: number;
  readonly foot: FootTold | NoReading;
}

/**
 * When a foot that stands changes how it meets the ground, as a share of its step; it leaves at `REAR_LEAVES`.
 * Source: Perry's phases: loading response ends at 12 % of the stride, and
 * terminal stance begins at 31 %, with the heel's rise; twice as much of a step
 */
const FLAT_SHARE = 0.24;
const HEEL_RISE_SHARE = 0.62;
const LEAST_FRAMES = 1; // what changes less than a frame before the next panel changes with it

/**
 * The footfalls of a walk: which foot is down when, and how. Between two panels that differ a foot goes
 * flat, lifts its heel and leaves the ground at its published moment where that lies between them; any
 * other change comes with the next panel.
 *
 * Shapes:  left spans, then right, each in frame order and without gaps; the last panel begins none
 * Units:   frames
 * Errors:  none; a foot that nobody labelled or marked answers "cannot-tell"
 */
export function footfalls(study: Study): readonly FootSpan[] {
  const { panels } = study.walk;
  const spans: FootSpan[] = [];
  for (const side of SIDES) {
    const feet = panels.map((panel) => footState(study, panel, side));
    for (const [at, panel] of panels.entries()) {
      const [next, foot, after] = [panels[at + 1], feet[at], feet[at + 1]];
      if (next === undefined || foot === undefined || after === undefined) continue;
      if (!(next.frame > panel.frame)) continue;
      const span = { side, panel: panel.id, from: panel.frame, to: next.frame, foot };
      const moment = changesAt(study, span, panel, after);
      if (moment === null) spans.push(span);
      else spans.push({ ...span, to: moment }, { ...span, from: moment, foot: after });
    }
  }
  return spans;
}

/** The moment within a span at which its foot changes; null where it does not, or with the next panel. */
function changesAt(
  { steps }: Study,
  { side, from, to, foot }: FootSpan,
  panel: WalkPanel,
  after: FootTold | NoReading,
): number | null {
  if (foot.kind !== "value" || after.kind !== "value") return null;
  const step = stepAt(steps, panel);
  const length = step === null ? null : stepFrames(step);
  if (step === null || length === null) return null;
  const share = isOtherFoot(step, side)
    ? shareOfLeaving(foot.state, after.state)
    : shareOfRolling(foot.state, after.state);
  if (share === null) return null;
  const moment = step.contact.frame + share * length;
  return moment > from && moment <= to - LEAST_FRAMES ? moment : null;
}

function shareOfLeaving(before: FootState, after: FootState): number | null {
  return before !== "air" && after === "air" ? REAR_LEAVES.at : null;
}

function shareOfRolling(before: FootState, after: FootState): number | null {
  if (before === "heel" && after === "flat") return FLAT_SHARE;
  return before === "flat" && (after === "ball" || after === "toe") ? HEEL_RISE_SHARE : null;
}
