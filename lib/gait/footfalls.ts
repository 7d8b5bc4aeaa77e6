import { SIDES, type Side } from "../body";
import type { NoReading } from "./answer";
import { stepFrames } from "./expected-frames";
import { type FootTold, footState, isOtherFoot, stepAt } from "./foot-state";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";

/** One foot from one panel to the next, or to the moment between them at which it leaves. */
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
 * When the rear foot leaves the ground, as a share of the other foot's step.
 * Source: opposite toe-off at 12 % of the stride, so 0.24 of the step (Perry's phases; Whittle 7–10 %)
 */
const TOE_OFF_SHARE = 0.24;
const LEAST_FRAMES = 1; // a foot that leaves less than a frame before the next panel leaves with it

/**
 * The footfalls of a walk: which foot is down when, and how. A pose's state lasts until the next panel, as
 * keys do; only a foot that leaves the ground between two panels far apart leaves at its published moment.
 *
 * Shapes:  left spans, then right, each in frame order and without gaps; the last panel begins none
 * Units:   frames
 * Errors:  none; a foot that nobody labelled or marked answers "cannot-tell"
 */
export function footfalls(study: Study): readonly FootSpan[] {
  const { panels } = study.walk;
  return SIDES.flatMap((side) => {
    const feet = panels.map((panel) => footState(study, panel, side));
    return panels.slice(0, -1).flatMap((panel, at): FootSpan[] => {
      const next = panels[at + 1];
      const foot = feet[at];
      const after = feet[at + 1];
      if (next === undefined || foot === undefined || !(next.frame > panel.frame)) return [];
      const span = { side, panel: panel.id, from: panel.frame, to: next.frame, foot };
      const leaves = after === undefined ? null : leavesAt(study, span, panel, after);
      if (leaves === null || after === undefined) return [span];
      return [
        { ...span, to: leaves },
        { ...span, from: leaves, foot: after },
      ];
    });
  });
}

/** The moment within a span at which its foot leaves the ground; null where it does not, or at its end. */
function leavesAt(
  { steps }: Study,
  { side, from, to, foot }: FootSpan,
  panel: WalkPanel,
  after: FootTold | NoReading,
): number | null {
  if (foot.kind !== "value" || foot.state === "air") return null;
  if (after.kind !== "value" || after.state !== "air") return null;
  const step = stepAt(steps, panel);
  const length = step === null ? null : stepFrames(step);
  if (step === null || length === null || !isOtherFoot(step, side)) return null;
  const moment = step.contact.frame + TOE_OFF_SHARE * length;
  return moment > from && moment <= to - LEAST_FRAMES ? moment : null;
}
