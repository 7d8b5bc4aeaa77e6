import {
  footJoints,
  type JointName,
  limbJoint,
  type Mark,
  markOf,
  PANEL,
  type Side,
  type ViewMarks,
} from "../../body";
import { walkLegLength } from "../../gait";
import { insidePolygon, type Point, VIEWS, type View } from "../../geometry";
import { cutStroke, type Stroke } from "../../ink";
import type { Panel } from "../sheet";
import { frontFollows, withKnee } from "./leg-follows";
import { isRefusal, type PassOn, passingTo } from "./passing";

/**
 * One foot of a panel for another: its heel, ball, toe and ankle where they are on the paper, in every
 * view that has them, and, where it is wished, the ink round them. A leg that was marked keeps its
 * lengths: its knee is solved; where it does not reach, the knee stays and the remark will tell.
 *
 * Units:   panel units
 */
export function footCopy(
  from: Panel,
  to: Panel,
  { side, ink }: { readonly side: Side; readonly ink: boolean },
): PassOn {
  if (from.id === to.id) return { kind: "cannot", why: "it is the same panel" };
  const feet = { side: footOf(from, "side", side), front: footOf(from, "front", side) };
  if (VIEWS.every((view) => Object.keys(feet[view]).length === 0)) {
    return { kind: "cannot-tell", needs: `the ${side} foot marked there` };
  }
  const legUnits = legOf([from, to]);
  const set = { ...to.marks.side, ...feet.side };
  const solved = withKnee(to.marks.side, set, side, legUnits);
  const sideView = isRefusal(solved) ? set : solved;
  const followed = frontFollows(to.marks, sideView, [limbJoint(side, "knee")]);
  const after = { side: sideView, front: { ...followed.front, ...feet.front } };
  const strokes = ink ? VIEWS.flatMap((view) => inkRound(from, view, feet[view], legUnits)) : [];
  return passingTo(
    to,
    after,
    strokes.map((stroke) => ({ ...stroke, panel: to.id })),
  );
}

function legOf(panels: readonly Panel[]): number {
  const leg = walkLegLength({ panels });
  return leg.kind === "value" ? leg.value : PANEL.plainLeg;
}

function footOf(panel: Panel, view: View, side: Side): ViewMarks {
  const foot: Partial<Record<JointName, Mark>> = {};
  for (const joint of footJoints(side)) {
    const mark = markOf(panel.marks[view], joint);
    if (mark !== null) foot[joint] = mark;
  }
  return foot;
}

/** Ink this near to a foot's bones is the foot's: a share of a leg, about half a shoe's height. */
const NEAR = 0.08;

/** The pieces of a view's ink that lie round a foot. */
function inkRound(panel: Panel, view: View, foot: ViewMarks, legUnits: number): Stroke[] {
  const bones = Object.values(foot);
  if (bones.length === 0) return [];
  const near = (point: Point) => nearest(point, bones) <= NEAR * legUnits;
  return panel.ink[view].flatMap(({ id: _id, ...stroke }) =>
    stroke.points.some(([x, y]) => near({ x, y })) ? cutStroke(stroke, near) : [],
  );
}

/** How near a point lies to the closed line through the foot's marks; 0 inside it. */
function nearest(point: Point, corners: readonly Point[]): number {
  if (insidePolygon(point, corners)) return 0;
  const gaps = corners.map((corner, n) => toSegment(point, corners.at(n - 1) ?? corner, corner));
  return Math.min(...gaps);
}

function toSegment(point: Point, from: Point, to: Point): number {
  const way = { x: to.x - from.x, y: to.y - from.y };
  const length = way.x ** 2 + way.y ** 2;
  const along =
    length === 0 ? 0 : ((point.x - from.x) * way.x + (point.y - from.y) * way.y) / length;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - from.x - way.x * share, point.y - from.y - way.y * share);
}
