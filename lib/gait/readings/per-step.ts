import type { Step } from "../step";
import type { Study } from "../study";

/**
 * Remembers what was worked out on a step: a study finds its steps anew, so a step belongs to one study. What
 * rests on a step's length asks for it many times.
 */
export function perStep<Told>(work: (study: Study, step: Step) => Told): typeof work {
  const known = new WeakMap<Step, Told>();
  return (study, step) => {
    const before = known.get(step);
    if (before !== undefined) return before;
    const told = work(study, step);
    known.set(step, told);
    return told;
  };
}
