import { expectedFrames, type Timed } from "./expected-frames";
import { patternFor } from "./pattern";
import type { Step } from "./step";
import type { Study } from "./study";

/**
 * Where a study's yardstick puts the poses of a step: by trade and life where they are in any walk, else
 * where the pattern step has them, which itself is as it is.
 *
 * Errors:  none; null where nothing can be expected
 */
export function expectedIn(study: Study, step: Step): readonly Timed[] | null {
  const { pattern, common, walk } = study;
  if (pattern === null) return expectedFrames(step, common, walk);
  if (pattern.kind === "cannot-tell") return null;
  return expectedFrames(step, common, walk, patternFor(pattern, study, step) ?? step);
}
