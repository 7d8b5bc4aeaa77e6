import { type JointName, type Mark, markOf, type PoseMarks, type ViewMarks } from "../../lib/body";
import { guessedMarks } from "../../lib/gait";
import type { View } from "../../lib/geometry";
import { type Panel, type PanelId, type Sheet, walkOf } from "../../lib/sheet";
import { onPaper } from "./on-paper";
import { leftOfQuickSet } from "./prompt";
import { proposeMark } from "./propose-mark";

/** What was guessed for a panel, for as long as the sheet stays as it is: papers ask at every tap. */
const known = new WeakMap<Sheet, Map<PanelId, PoseMarks | null>>();

/** The library's guess for a whole panel; null where it cannot tell, as when nobody carries the weight. */
function guessedPose(sheet: Sheet, panel: PanelId): PoseMarks | null {
  const told = known.get(sheet) ?? new Map<PanelId, PoseMarks | null>();
  known.set(sheet, told);
  const before = told.get(panel);
  if (before !== undefined) return before;
  const guess = guessedMarks(walkOf(sheet), panel, sheet.head.yardstick);
  const pose = guess.kind === "guess" ? guess.marks : null;
  told.set(panel, pose);
  return pose;
}

/**
 * Where a joint that is not marked would go: what the prompt shows on the paper before anything is
 * placed. Where the library has no guess, as the nearest panel has it.
 *
 * Units:   panel units, y down
 */
export function guessedMark(sheet: Sheet, panel: Panel, view: View, joint: JointName): Mark {
  const pose = guessedPose(sheet, panel.id);
  const mark = pose === null ? null : markOf(pose[view], joint);
  return mark === null
    ? proposeMark(sheet.panels, panel, view, joint)
    : { ...onPaper(mark), precision: mark.precision };
}

/** The guesses for all that the quick set still lacks in one view. */
export function guessedQuickSet(sheet: Sheet, panel: Panel, view: View): ViewMarks {
  const joints = leftOfQuickSet(panel.marks[view], view);
  return Object.fromEntries(joints.map((joint) => [joint, guessedMark(sheet, panel, view, joint)]));
}
