import { otherSide, type Side } from "../body";
import type { Step } from "./step";
import type { WalkPanel } from "./walk";

/**
 * The step in which a foot was put down that stands in this panel: the step it carries, up to the moment
 * it leaves the ground in the next one. Null where the foot is not told to be planted.
 */
export function stanceOf(steps: readonly Step[], panel: WalkPanel, side: Side): Step | null {
  const at = steps.findIndex(({ panels }) => panels.includes(panel));
  const step = steps[at];
  if (step === undefined) {
    const last = steps.find(({ next }) => next === panel); // the contact that closes the loop
    return last?.weightOn === side ? last : null;
  }
  if (step.weightOn === side) return step;
  const before = steps[at - 1];
  const leaving = panel === step.contact || panel === step.down;
  const planted = before?.weightOn === side && step.weightOn === otherSide(side) && leaving;
  return planted ? before : null;
}
