import { rootSumSquare } from "../../geometry";
import { type Answer, answerOf } from "../answer";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

const NEEDS =
  "the hips marked at the contacts of a stride and the poses beside them, each at a frame of its own";

/**
 * The hips' speed across the seam: how their rise and fall changes where the stride begins again, from before
 * its last contact to after its first, less how it changes at the contact in its middle. Where both steps are
 * alike and the loop closes it is 0; above 0 the hips are thrown up at the seam, below 0 they drop there.
 *
 * Units:   leg lengths a frame; the speeds go straight from pose to pose
 * Errors:  none; without these hips, or where two poses share a frame, it answers "cannot-tell"
 * Source:  ± is the root-sum-square of the seven heights' own, each over the frames that it is divided by
 */
export function seamSpeed(study: Study, first: Step, second: Step): Answer {
  const { contact } = second;
  const [after, beforeMiddle] = [first.panels[1], first.panels.at(-1)];
  const [afterMiddle, before] = [second.panels[1], second.panels.at(-1)];
  if (after === undefined || beforeMiddle === undefined) return untold();
  if (afterMiddle === undefined || before === undefined || second.next === null) return untold();
  const ends = [
    speedBetween(study, before, second.next),
    speedBetween(study, first.contact, after),
    speedBetween(study, beforeMiddle, contact),
    speedBetween(study, contact, afterMiddle),
  ] as const;
  const [into, out, intoMiddle, outOfMiddle] = ends;
  const value = out.value - into.value - (outOfMiddle.value - intoMiddle.value);
  // The middle's own height is in both of its speeds, so what it adds is added before it is squared.
  const middle = ownOf(study, contact) * (1 / intoMiddle.frames + 1 / outOfMiddle.frames);
  const others = [
    ownOf(study, before) / into.frames,
    ownOf(study, second.next) / into.frames,
    ownOf(study, first.contact) / out.frames,
    ownOf(study, after) / out.frames,
    ownOf(study, beforeMiddle) / intoMiddle.frames,
    ownOf(study, afterMiddle) / outOfMiddle.frames,
  ];
  return answerOf(value, rootSumSquare(middle, ...others), "leg/frame", NEEDS);
}

function untold(): Answer {
  return { kind: "cannot-tell", needs: NEEDS };
}

/** How fast the hips rise from a pose to the next; NaN where they cannot be read, or no frame is between. */
function speedBetween(study: Study, from: WalkPanel, to: WalkPanel) {
  const frames = to.frame - from.frame;
  const [was, is] = [study.hipOf(from), study.hipOf(to)];
  const told = was.kind === "value" && is.kind === "value" && frames > 0;
  return { frames, value: told ? (is.value - was.value) / frames : Number.NaN };
}

function ownOf(study: Study, panel: WalkPanel): number {
  const hips = study.hipOf(panel);
  return hips.kind === "value" ? hips.plusMinus : Number.NaN;
}
