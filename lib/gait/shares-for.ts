import type { Side } from "../body";
import { STEP_POSES, type StepPose } from "../motion";
import { shareIn } from "./expected-frames";
import { ruleFor } from "./pattern";
import { POSE_SHARES } from "./pose-shares";
import type { Study } from "./study";

/**
 * When each pose of a side's step is to come, as a share of the step: by trade and life where they are in any
 * walk, else where the step has them that this side goes by.
 *
 * Errors:  none; NaN for a pose that the step it goes by has not
 */
export function sharesFor(study: Study, side: Side | null): Readonly<Record<StepPose, number>> {
  const { pattern, common } = study;
  if (pattern?.kind !== "pattern") return POSE_SHARES[common];
  const rule = ruleFor(pattern, study, side);
  const shares = STEP_POSES.map((pose) => [pose, shareIn(rule, pose) ?? Number.NaN]);
  return Object.fromEntries(shares) as Record<StepPose, number>;
}
