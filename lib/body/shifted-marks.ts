import type { JointName } from "./joint";
import type { Mark, ViewMarks } from "./mark";
import { markOf } from "./mark-of";

/** A hundredth of a panel unit: far finer than a hand can mark, and shorter to keep. */
export function hundredth(units: number): number {
  return Math.round(units * 100) / 100;
}

/**
 * Marks of one view moved by a way; joints that are not marked are passed over, and what does not move
 * stays as it is, to the last digit.
 *
 * Units:   panel units, y down
 */
export function shiftedMarks(
  marks: ViewMarks,
  joints: readonly JointName[],
  by: { readonly x: number; readonly y: number },
): ViewMarks {
  const moved: Partial<Record<JointName, Mark>> = {};
  for (const joint of joints) {
    const mark = markOf(marks, joint);
    if (mark !== null) moved[joint] = { ...mark, x: go(mark.x, by.x), y: go(mark.y, by.y) };
  }
  return { ...marks, ...moved };
}

/** One mark put elsewhere, with the precision that it had. */
export function putMark(
  marks: ViewMarks,
  joint: JointName,
  to: { readonly x: number; readonly y: number },
): ViewMarks {
  const mark = markOf(marks, joint);
  if (mark === null || (mark.x === to.x && mark.y === to.y)) return marks;
  return { ...marks, [joint]: { ...mark, x: hundredth(to.x), y: hundredth(to.y) } };
}

function go(from: number, by: number): number {
  return by === 0 ? from : hundredth(from + by);
}
