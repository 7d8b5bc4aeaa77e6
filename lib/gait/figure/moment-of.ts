import { isStepPose } from "../../motion";
import { placeOf } from "../ground-mark";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { leadInMoment, poseMoment } from "./pose-moment";
import type { Moment } from "./posed-legs";

/** The step a panel is in, and how far it goes over the ground: leg lengths, null where nothing tells. */
export function stepAround(
  { steps, walk }: Study,
  panel: WalkPanel,
): { readonly step: Step | null; readonly length: number | null } {
  const own = steps.find(({ panels }) => panels.includes(panel)) ?? null;
  const step = own ?? steps.find(({ next }) => next === panel) ?? steps[0] ?? null;
  if (step?.next == null) return { step: own, length: null };
  const length = placeOf(step.next, walk) - placeOf(step.contact, walk);
  return { step: own, length: length > 0 ? length : null };
}

/**
 * The moment of the published step for a panel. A breakdown has the moment between the named poses
 * about it that its frame has.
 */
export function momentOf(study: Study, panel: WalkPanel, stepLength: number | null): Moment {
  const { yardstick } = study;
  if (isStepPose(panel.pose)) return poseMoment(panel.pose, yardstick, stepLength);
  if (panel.pose === "lead-in") return leadInMoment(stepLength);
  const { step } = stepAround(study, panel);
  const named = (step?.panels ?? []).flatMap((one) =>
    isStepPose(one.pose)
      ? [{ frame: one.frame, share: poseMoment(one.pose, yardstick, null).share }]
      : [],
  );
  const anchors = step?.next == null ? named : [...named, { frame: step.next.frame, share: 1 }];
  const before = anchors.findLast(({ frame }) => frame <= panel.frame);
  const after = anchors.find(({ frame }) => frame > panel.frame);
  if (before === undefined || after === undefined)
    return poseMoment("passing", yardstick, stepLength);
  const along = (panel.frame - before.frame) / (after.frame - before.frame);
  return { share: before.share + along * (after.share - before.share), stepLength, hips: null };
}
