import { JOINTS, type JointName, type Mark, type PoseMarks, type ViewMarks } from "../../body";
import { VIEWS, type View } from "../../geometry";
import type { Stroke } from "../../ink";
import type { PanelId } from "../sheet";

/** Marks to set, by joint; null lifts one. What is not named stays. Units: panel units. */
export type ViewChanges = { readonly [J in JointName]?: Mark | null };
export type MarkChanges = Readonly<Record<View, ViewChanges>>;

/** What passing on does to one panel: shown as a ghost first, then written as one edit. */
export interface Passing {
  readonly kind: "passing";
  readonly to: PanelId;
  readonly marks: MarkChanges;
  /** Strokes that come on top of the panel's own; they get ids when they are written. */
  readonly ink: readonly Stroke[];
}

/** Why something cannot be passed on: marks that are needed, or what stands against it. */
export type CannotPass =
  | { readonly kind: "cannot-tell"; readonly needs: string }
  | { readonly kind: "cannot"; readonly why: string };

export type PassOn = Passing | CannotPass;

/** Whether a view's marks could not be made, and why. */
export function isRefusal(made: ViewMarks | CannotPass): made is CannotPass {
  return "kind" in made;
}

/** What turns one view's marks into others, and nothing more. */
export function changesBetween(before: ViewMarks, after: ViewMarks): ViewChanges {
  const changes: Partial<Record<JointName, Mark | null>> = {};
  for (const joint of JOINTS) {
    const was = before[joint];
    const is = after[joint];
    if (is === undefined) {
      if (was !== undefined) changes[joint] = null;
    } else if (was?.x !== is.x || was.y !== is.y || was.precision !== is.precision) {
      changes[joint] = is;
    }
  }
  return changes;
}

/** Marks as they are once the changes are made. */
export function marksAfter(before: PoseMarks, changes: MarkChanges): PoseMarks {
  return { side: applied(before.side, changes.side), front: applied(before.front, changes.front) };
}

function applied(before: ViewMarks, changes: ViewChanges): ViewMarks {
  const after: Partial<Record<JointName, Mark>> = {};
  for (const joint of JOINTS) {
    const change = changes[joint];
    const mark = change === undefined ? before[joint] : (change ?? undefined);
    if (mark !== undefined) after[joint] = mark;
  }
  return after;
}

/** A passing that goes from these marks to those; none when nothing would change. */
export function passingTo(
  to: { readonly id: PanelId; readonly marks: PoseMarks },
  after: PoseMarks,
  ink: readonly Stroke[] = [],
): PassOn {
  const marks = {
    side: changesBetween(to.marks.side, after.side),
    front: changesBetween(to.marks.front, after.front),
  };
  const idle = ink.length === 0 && VIEWS.every((view) => Object.keys(marks[view]).length === 0);
  if (idle) return { kind: "cannot", why: "it is so already" };
  return { kind: "passing", to: to.id, marks, ink };
}
