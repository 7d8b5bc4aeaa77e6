import { distance, rootSumSquare } from "../geometry";
import { SIDES, type Side } from "./joint";
import type { ViewMarks } from "./mark";
import { markOf } from "./mark-of";
import { limbJoint } from "./side";

export interface Length {
  readonly value: number;
  readonly plusMinus: number;
}

export type LegEnd = "ankle" | "heel";

/** The limbs of a view, for as long as somebody holds its marks, which are never changed but replaced. */
const known = new WeakMap<ViewMarks, Readonly<Record<LegEnd, readonly Length[]>>>();

export function limbs(marks: ViewMarks, end: LegEnd): readonly Length[] {
  const before = known.get(marks);
  if (before !== undefined) return before[end];
  const told = { ankle: limbsTo(marks, "ankle"), heel: limbsTo(marks, "heel") };
  known.set(marks, told);
  return told[end];
}

function limbsTo(marks: ViewMarks, end: LegEnd): readonly Length[] {
  return SIDES.map((side) => limbTo(marks, side, end)).filter((limb) => limb !== null);
}

/** Hip to knee and knee to the end that was marked. */
export function limbTo(marks: ViewMarks, side: Side, end: LegEnd): Length | null {
  const hip = markOf(marks, limbJoint(side, "hip"));
  const knee = markOf(marks, limbJoint(side, "knee"));
  const last = markOf(marks, limbJoint(side, end));
  if (hip === null || knee === null || last === null) return null;
  const value = distance(hip, knee) + distance(knee, last);
  if (!(value > 0)) return null;
  // The knee lies in both lengths; on a straight leg its error cancels, so this is on the safe side.
  return {
    value,
    plusMinus: rootSumSquare(hip.precision, knee.precision, knee.precision, last.precision),
  };
}
