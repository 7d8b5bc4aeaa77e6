import { type JointName, markOf, type ViewMarks } from "../../body";
import type { Point } from "../../geometry";

/** Where joints are marked, in their order; null unless every one is. Units: panel units. */
export function markPoints(marks: ViewMarks, joints: readonly JointName[]): Point[] | null {
  const points = joints.map((joint) => markOf(marks, joint));
  if (points.length === 0 || points.some((point) => point === null)) return null;
  return points.flatMap((point) => (point === null ? [] : [{ x: point.x, y: point.y }]));
}

/** The middle of some points. */
export function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

/** Points moved by as much as takes `from` to `to`. */
export function movedTo(points: readonly Point[], from: Point, to: Point): Point[] {
  return points.map(({ x, y }) => ({ x: x + to.x - from.x, y: y + to.y - from.y }));
}
