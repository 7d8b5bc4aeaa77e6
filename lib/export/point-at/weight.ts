import {
  centreOfMass,
  type LimbJoint,
  limbJoint,
  markOf,
  PANEL,
  SIDES,
  type Side,
  type ViewMarks,
} from "../../body";
import type { Point } from "../../geometry";
import { hipsMiddle } from "../draw-panel";
import { type RemarkShape, type ShapePanel, type Shaper, shapeOf } from "./shape";

/** The weight's plumb line over what carries it, from the side. */
export const weightFromSide: Shaper = ({ panel, remark, view, load }) => {
  const marks = panel.marks[view];
  const span = spanOf(marks, panel.pose === "passing" ? remark.side : null);
  return plumb(weightOf(marks, panel.pose, load), span);
};

/** The same from the front, over the foot it should be on. */
export const weightFromFront: Shaper = ({ panel, remark: { side }, view }) => {
  const marks = panel.marks[view];
  return plumb(hipsMiddle(marks), side === null ? null : underAnkle(marks, side));
};

interface Span {
  readonly from: number;
  readonly to: number;
}

/** The weight dropped to the ground, and how far it falls beside what carries it. */
function plumb(weight: Point | null, span: Span | null): RemarkShape | null {
  if (weight === null || span === null) return null;
  const onGround = (x: number): Point => ({ x, y: PANEL.groundY });
  const nearest = Math.min(span.to, Math.max(span.from, weight.x));
  const beside = nearest !== weight.x;
  return shapeOf({
    dashed: [[{ x: weight.x, y: weight.y }, onGround(weight.x)]],
    solid: [[onGround(span.from), onGround(span.to)]],
    arrow: beside ? [onGround(nearest), onGround(weight.x)] : null,
    label: onGround(weight.x),
  });
}

/** On the stand it is the centre of mass that is asked for, what is carried among it; in a step the hips. */
function weightOf(marks: ViewMarks, pose: ShapePanel["pose"], load: number): Point | null {
  return pose === "stand" ? centreOfMass(marks, { load }) : hipsMiddle(marks);
}

const SOLE: readonly LimbJoint[] = ["heel", "ball", "toe"];

/** From heel to toe of one foot, or of both; by the ankles where no sole is marked. */
function spanOf(marks: ViewMarks, side: Side | null): Span | null {
  const feet = side === null ? SIDES : [side];
  const xs = feet.flatMap((foot) => {
    const soles = [...SOLE, "ankle" as const].map((part) => markOf(marks, limbJoint(foot, part)));
    return soles.filter((mark) => mark !== null).map(({ x }) => x);
  });
  return xs.length === 0 ? null : { from: Math.min(...xs), to: Math.max(...xs) };
}

const HALF_A_SHOE = 18; // panel units: how broad a foot is drawn from ahead, half

function underAnkle(marks: ViewMarks, side: Side): Span | null {
  const parts: readonly LimbJoint[] = ["ankle", ...SOLE];
  const foot = parts
    .map((part) => markOf(marks, limbJoint(side, part)))
    .find((mark) => mark !== null);
  return foot == null ? null : { from: foot.x - HALF_A_SHOE, to: foot.x + HALF_A_SHOE };
}
