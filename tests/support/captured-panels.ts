import {
  type JointName,
  limbJoint,
  type Mark,
  markOf,
  PANEL,
  SIDES,
  type Side,
  type ViewMarks,
} from "../../lib/body";
import { distance } from "../../lib/geometry";
import { capturedExample, marksAfter, type Panel, type PassOn, type Sheet } from "../../lib/sheet";
import { ids } from "./peers";

/** A plain figure's leg. Panel units. */
export const LEG = PANEL.plainLeg;

/** The strip of captured poses, marked in both views. */
export const capturedSheet: Sheet = capturedExample(ids());

export const FEET: readonly JointName[] = SIDES.flatMap((side) =>
  (["ankle", "heel", "ball", "toe"] as const).map((part) => limbJoint(side, part)),
);

/** The first panel of a pose with the weight on a side. */
export function panelAt(pose: Panel["pose"], weightOn: Side, from = capturedSheet): Panel {
  const panel = from.panels.find((one) => one.pose === pose && one.weightOn === weightOn);
  if (panel === undefined) throw new RangeError(`no ${weightOn} ${pose}`);
  return panel;
}

/** A panel's marks once something was passed on to it. */
export function passed(panel: Panel, given: PassOn): Panel["marks"] {
  if (given.kind !== "passing") throw new Error(JSON.stringify(given));
  return marksAfter(panel.marks, given.marks);
}

export function mark(marks: ViewMarks, joint: JointName): Mark {
  const found = markOf(marks, joint);
  if (found === null) throw new RangeError(`no ${joint}`);
  return found;
}

const LEG_BONES = [
  ["hip", "knee"],
  ["knee", "ankle"],
] as const;

/** By how much a side's thigh and shank are longer or shorter than they were, the worse of them. Panel units. */
export function legStretch(before: ViewMarks, now: ViewMarks, side: Side): number {
  const bone = (marks: ViewMarks, [from, to]: (typeof LEG_BONES)[number]) =>
    distance(mark(marks, limbJoint(side, from)), mark(marks, limbJoint(side, to)));
  return Math.max(...LEG_BONES.map((ends) => Math.abs(bone(now, ends) - bone(before, ends))));
}

/** On which side of the line from hip to ankle a knee lies, by its sign; about 0: drawn straight. */
export function kneeSide(marks: ViewMarks, side: Side): number {
  const at = (part: "hip" | "knee" | "ankle") => mark(marks, limbJoint(side, part));
  const [hip, knee, ankle] = [at("hip"), at("knee"), at("ankle")];
  return (ankle.x - hip.x) * (knee.y - hip.y) - (ankle.y - hip.y) * (knee.x - hip.x);
}
