import type { JointName } from "../body";
import { limbJoint, markOf, PANEL, SIDES } from "../body";
import { gathered } from "../gathered";
import { rootSumSquare, VIEWS, type View } from "../geometry";
import { clearlyBeyond } from "./beyond";
import { type Apart, heightsApart } from "./heights-apart";
import { HEIGHT_LIMITS } from "./methods/views";
import type { Step } from "./step";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";

/** A pose's hips: how high, and the marks that say so. Leg lengths. */
export interface PosedHips {
  readonly panel: WalkPanel;
  readonly value: number;
  readonly plusMinus: number;
  readonly view: View;
  readonly joints: readonly JointName[];
}

const HIPS: readonly JointName[] = SIDES.map((side) => limbJoint(side, "hip"));

/**
 * The hips of a step's poses, that of the next contact among them. Where every one has both hips marked in
 * both views at about one height, a height is the mean of the four marks; else as `hipOf` has it. Poses without
 * hips are left out.
 */
export function stepHeights(study: Study, { panels, next }: Step): readonly PosedHips[] {
  return heightsOf(study, next === null ? panels : [...panels, next]);
}

/**
 * The hips of poses that are held against one another: by one and the same set of marks, so that what the
 * views disagree in falls out.
 */
export function heightsOf(study: Study, all: readonly WalkPanel[]): readonly PosedHips[] {
  const both = gathered(all, (panel) => study.once(panel, ofFourMarks));
  if (both.length === all.length) return both;
  return gathered(all, (panel): PosedHips[] => {
    const hip = study.hipOf(panel);
    return hip.kind === "value" ? [{ panel, ...hip }] : [];
  });
}

/**
 * From here on `views` says that a hip stands at two heights: one of the marks is not on it, and a mean of them
 * would move the whole body. Leg lengths.
 */
const ONE_HEIGHT_WITHIN = Math.max(...HEIGHT_LIMITS.map(({ value }) => value));

function ofFourMarks({ leg }: Study, panel: WalkPanel): PosedHips[] {
  const marks = gathered(VIEWS, (view) => HIPS.map((joint) => markOf(panel.marks[view], joint)));
  const known = marks.filter((mark) => mark !== null);
  if (leg.kind === "cannot-tell" || known.length < marks.length) return [];
  if (heightsApart(panel, leg).some(isHipAtTwoHeights)) return [];
  const y = known.reduce((sum, mark) => sum + mark.y, 0) / known.length;
  const precision = rootSumSquare(...known.map((mark) => mark.precision)) / known.length;
  const value = (PANEL.groundY - y) / leg.value;
  return [{ panel, value, plusMinus: precision / leg.value, view: "side", joints: HIPS }];
}

function isHipAtTwoHeights({ joint, measured: { value, plusMinus } }: Apart): boolean {
  return HIPS.includes(joint) && clearlyBeyond(Math.abs(value), plusMinus, ONE_HEIGHT_WITHIN);
}
