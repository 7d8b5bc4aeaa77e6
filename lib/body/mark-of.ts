import type { JointName } from "./joint";
import type { Mark, ViewMarks } from "./mark";

/**
 * A joint's mark, or null where it was not marked. A mark that is not made of finite numbers
 * counts as none: a reading made from it would be neither right nor wrong.
 */
export function markOf(marks: ViewMarks, joint: JointName): Mark | null {
  const mark = marks[joint];
  if (mark === undefined) return null;
  const usable =
    Number.isFinite(mark.x) &&
    Number.isFinite(mark.y) &&
    Number.isFinite(mark.precision) &&
    mark.precision >= 0;
  return usable ? mark : null;
}
