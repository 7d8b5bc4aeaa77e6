import { gathered } from "../../gathered";
import type { Step } from "../step";

/** Two steps, one after the other. */
export interface Stride {
  readonly first: Step;
  readonly second: Step;
}

/**
 * The strides of a walk: its steps two by two; an odd one at the end goes with the one before it. None
 * where there is but one step.
 */
export function stridesOf(steps: readonly Step[]): readonly Stride[] {
  const starts = gathered(steps, (_, index) => (index % 2 === 0 ? [index] : []));
  return gathered(starts, (start) => {
    const at = start === steps.length - 1 ? start - 1 : start;
    const first = steps[at];
    const second = steps[at + 1];
    return first === undefined || second === undefined ? [] : [{ first, second }];
  });
}
