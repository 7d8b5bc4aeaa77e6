import { type JointName, markOf, type ViewMarks } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { nextJoint, quickSet } from "./proposals";

/**
 * The joint whose guess is shown and may be accepted: the one that was chosen, else the next of the
 * quick set. Null where that is marked already: finer marks are placed by hand alone.
 */
export function promptedJoint(
  marks: ViewMarks,
  view: View,
  taken: JointName | null,
): JointName | null {
  if (taken !== null) return markOf(marks, taken) === null ? taken : null;
  const next = nextJoint(marks, view);
  return next !== null && quickSet(view).includes(next) ? next : null;
}

/** The joints that accepting all guesses would mark, in the order they are asked for. */
export function leftOfQuickSet(marks: ViewMarks, view: View): readonly JointName[] {
  return quickSet(view).filter((joint) => markOf(marks, joint) === null);
}
