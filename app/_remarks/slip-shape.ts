import { type JointName, limbJoint, markOf, PANEL, type Side } from "../../lib/body";
import { type GroundPace, placeOf, type WalkPanel } from "../../lib/gait";
import type { Point } from "../../lib/geometry";

/** A slip on the paper where it is seen. Units: panel units of that paper, y down. */
export interface SlipShape {
  /** Where the mark was put down, and where it is now. */
  readonly from: Point;
  readonly to: Point;
  /** The outline of the foot where it was put down; null where its heel or toe is not marked. */
  readonly footprint: readonly Point[] | null;
}

export interface Slip {
  /** The panel where the foot was put down, and the one where it is seen to have moved. */
  readonly earlier: WalkPanel;
  readonly panel: WalkPanel;
  readonly side: Side;
  readonly joint: JointName;
  readonly pace: GroundPace;
  /** Panel units a leg length. */
  readonly legUnits: number;
}

/**
 * Where a planted foot was put down, as it lies on a later panel's paper: the ground went by
 * between the two. Null where a mark is missing.
 */
export function slipShape(slip: Slip): SlipShape | null {
  const from = putDown(slip, slip.joint);
  const to = markOf(slip.panel.marks.side, slip.joint);
  if (from === null || to === null) return null;
  return { from, to: { x: to.x, y: to.y }, footprint: footprint(slip) };
}

function putDown({ earlier, panel, pace, legUnits }: Slip, joint: JointName): Point | null {
  const mark = markOf(earlier.marks.side, joint);
  const x = (placeOf(earlier, pace) - placeOf(panel, pace)) * legUnits + (mark?.x ?? 0);
  return mark === null || !Number.isFinite(x) ? null : { x, y: mark.y };
}

/** A shoe's outline about heel and toe, standing on the ground. Panel units. */
const SHOE = { over: 12, instep: 34, toeCap: 14 } as const;

function footprint(slip: Slip): readonly Point[] | null {
  const heel = putDown(slip, limbJoint(slip.side, "heel"));
  const tip =
    putDown(slip, limbJoint(slip.side, "toe")) ?? putDown(slip, limbJoint(slip.side, "ball"));
  if (heel === null || tip === null || tip.x <= heel.x) return null;
  const back = heel.x - SHOE.over;
  const front = tip.x + SHOE.over;
  const sole = PANEL.groundY;
  return [
    { x: back, y: sole },
    { x: back, y: sole - SHOE.instep },
    { x: back + (front - back) * 0.5, y: sole - SHOE.instep },
    { x: front, y: sole - SHOE.toeCap },
    { x: front, y: sole },
  ];
}
