import {
  centreOfMass,
  type JointName,
  type LimbJoint,
  limbJoint,
  markOf,
  PANEL,
  SIDES,
  type Side,
  type ViewMarks,
} from "../body";
import type { Reading, Remark } from "../gait";
import type { Point, View } from "../geometry";
import type { Panel } from "../sheet";
import { hipsMiddle } from "./draw-panel";

export type Line = readonly [from: Point, to: Point];

/** How a remark about one pose is drawn on it. Units: panel units, y down. */
export interface RemarkShape {
  /** What is held against: the plumb line of the weight, the level that a foot should lie on. */
  readonly dashed: readonly Line[];
  /** What is there: the span of the feet, the sole. */
  readonly solid: readonly Line[];
  /** From where it should be to where it is; null where a line says it. */
  readonly arrow: Line | null;
  /** Where the amount is written. */
  readonly label: Point;
}

/**
 * The drawing of a remark that one pose alone shows: the weight's plumb line with the span of the feet
 * under it, the gap between a foot and the ground, the tilt of a foot. Null where the remark is not
 * about this view, a mark is missing, or the check is drawn otherwise.
 *
 * Units:   panel units, y down
 */
export function remarkShape(
  { check, side, spots }: Pick<Remark, "check" | "side" | "spots">,
  panel: Pick<Panel, "id" | "pose" | "marks">,
  view: View,
): RemarkShape | null {
  const spot = spots.findLast((one) => one.panel === panel.id);
  if (spot === undefined || spot.view !== view) return null;
  const marks = panel.marks[view];
  switch (check) {
    case "weight-side":
      return plumb(
        weightOf(marks, panel.pose),
        spanOf(marks, panel.pose === "passing" ? side : null),
      );
    case "weight-front":
      return plumb(hipsMiddle(marks), side === null ? null : underAnkle(marks, side));
    case "float":
    case "sink":
      return gap(marks, spot.joints[0]);
    case "foot-roll":
    case "symmetry":
      return tilt(marks, spot.joints);
    default:
      return null;
  }
}

/** "4.0 %" of a leg, or "12°" for an angle: what a label on a drawing says. */
export function amountOf({ value, unit }: Reading): string {
  const size = Math.abs(value);
  return unit === "rad"
    ? `${((180 * size) / Math.PI).toFixed(0)}°`
    : `${(100 * size).toFixed(1)} %`;
}

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
  return {
    dashed: [[{ x: weight.x, y: weight.y }, onGround(weight.x)]],
    solid: [[onGround(span.from), onGround(span.to)]],
    arrow: beside ? [onGround(nearest), onGround(weight.x)] : null,
    label: onGround(weight.x),
  };
}

/** On the stand it is the centre of mass that is asked for, in a step the hips. */
function weightOf(marks: ViewMarks, pose: Panel["pose"]): Point | null {
  return pose === "stand" ? centreOfMass(marks) : hipsMiddle(marks);
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

const TICK = 26; // panel units: half of the ground's tick under a foot

function gap(marks: ViewMarks, joint: JointName | undefined): RemarkShape | null {
  const mark = joint === undefined ? null : markOf(marks, joint);
  if (mark === null) return null;
  const ground = { x: mark.x, y: PANEL.groundY };
  const at = { x: mark.x, y: mark.y };
  return {
    dashed: [],
    solid: [
      [
        { x: mark.x - TICK, y: PANEL.groundY },
        { x: mark.x + TICK, y: PANEL.groundY },
      ],
    ],
    arrow: [ground, at],
    label: at,
  };
}

/** A line between two joints, against the level through the first: the sole from its heel, the shoulders. */
function tilt(marks: ViewMarks, [heelJoint, tipJoint]: readonly JointName[]): RemarkShape | null {
  const heel = heelJoint === undefined ? null : markOf(marks, heelJoint);
  const tip = tipJoint === undefined ? null : markOf(marks, tipJoint);
  if (heel === null || tip === null) return null;
  const level = { x: tip.x, y: heel.y };
  return {
    dashed: [[{ x: heel.x, y: heel.y }, level]],
    solid: [
      [
        { x: heel.x, y: heel.y },
        { x: tip.x, y: tip.y },
      ],
    ],
    arrow: null,
    label: { x: tip.x, y: Math.max(tip.y, heel.y) },
  };
}
