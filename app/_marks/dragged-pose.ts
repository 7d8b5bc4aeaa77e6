import {
  JOINTS,
  type JointName,
  type Mark,
  markOf,
  type PoseMarks,
  pulledPose,
  type Side,
  type ViewMarks,
} from "../../lib/body";
import { bearingFeet } from "../../lib/gait";
import { VIEWS, type View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { sideOfJoint } from "./joint-side";
import type { Drag } from "./mark-hand";

export interface DragOptions {
  readonly view: View;
  /** How exactly a mark is placed now. Panel units, ±. */
  readonly precision: number;
  /** The figure goes along. */
  readonly whole: boolean;
}

/**
 * The pose of a panel once one of its marks is dragged: that mark alone, or the whole figure with its
 * lengths kept and the feet that stand left where they are, the other view following in height.
 *
 * Units:   panel units, y down
 */
export function draggedPose(panel: Panel, drag: Drag, options: DragOptions): PoseMarks {
  const { marks } = panel;
  const { joint, to } = drag;
  const { view, precision, whole } = options;
  if (!whole) return { ...marks, [view]: { ...marks[view], [joint]: { ...to, precision } } };
  const pinned = pinnedFeet(panel, joint);
  const pulled = pulledPose(marks, { view, joint, to, pinned });
  const [side, front] = VIEWS.map((seen) => {
    const inked = panel.ink[seen].length > 0;
    return asExactAs(marks[seen], pulled[seen], { pulled: joint, precision, inked });
  });
  return { side: side ?? {}, front: front ?? {} };
}

/** The feet that stand, save one that is taken hold of itself. */
export function pinnedFeet(panel: Panel, pulled: JointName | null): readonly Side[] {
  const held = pulled !== null && isOfFoot(pulled) ? sideOfJoint(pulled) : null;
  return (bearingFeet(panel) ?? []).filter((side) => side !== held);
}

const FOOT = /-(ankle|heel|ball|toe)$/;

function isOfFoot(joint: JointName): boolean {
  return FOOT.test(joint);
}

interface Exactness {
  readonly pulled: JointName;
  readonly precision: number;
  /** There is ink that the marks are to lie on. */
  readonly inked: boolean;
}

/**
 * Over ink a pulled joint is as exact as the hand is now, and what went along no more exact than that.
 * Without ink the figure is the drawing, and is where it is.
 */
function asExactAs(before: ViewMarks, after: ViewMarks, exactness: Exactness): ViewMarks {
  const marks = JOINTS.flatMap((joint): [JointName, Mark][] => {
    const mark = markOf(after, joint);
    const was = markOf(before, joint);
    if (mark === null) return [];
    if (was === null || (was.x === mark.x && was.y === mark.y)) return [[joint, mark]];
    return [[joint, { ...mark, precision: exactnessOf(joint, was, exactness) }]];
  });
  return Object.fromEntries(marks);
}

function exactnessOf(joint: JointName, was: Mark, { pulled, precision, inked }: Exactness): number {
  if (joint === pulled) return inked ? precision : Math.min(was.precision, precision);
  return inked ? Math.max(was.precision, precision) : was.precision;
}
