import {
  followedInHeight,
  type JointName,
  middleJoint,
  type PoseMarks,
  putMark,
  type Side,
} from "../../body";
import { distance, type Point } from "../../geometry";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { type LimbName, type LimbSeen, limbSeen } from "./limb-of";

/**
 * A panel's marks with both bones of one limb at the figure's own lengths: its knee or elbow solved, hip and
 * ankle, shoulder and wrist kept. A hand that is out of the arm's reach comes along; where only one bone is
 * marked, its lower end does. The front view follows in height. Null for a leg that does not reach.
 */
export function withLengths(
  study: Study,
  panel: WalkPanel,
  side: Side,
  limb: LimbName,
): PoseMarks | null {
  const seen = limbSeen(study, panel, side, limb);
  const moves = solved(seen) ?? (limb === "arm" || isPart(seen) ? laidOut(seen) : null);
  return moves === null ? null : movedFromSide(panel.marks, moves);
}

/** Joints of the side view put elsewhere; the front view follows in height. */
export function movedFromSide(
  { side, front }: PoseMarks,
  moves: readonly (readonly [JointName, Point])[],
): PoseMarks {
  const moved = moves.reduce((marks, [joint, to]) => putMark(marks, joint, to), side);
  return { side: moved, front: followedInHeight(side, moved, front, "front") };
}

type Moves = readonly (readonly [JointName, Point])[];

function solved({ names, root, middle, end, upper, lower, bend }: LimbSeen): Moves | null {
  if (root === null || middle === null || end === null || upper === null || lower === null) {
    return null;
  }
  const at = middleJoint(root, end, { upper, lower, bend });
  return at === null ? null : [[names.middle, at]];
}

function isPart({ root, middle, end }: LimbSeen): boolean {
  return root === null || middle === null || end === null;
}

/** Each bone on the way it was drawn, from the body outward. */
function laidOut({ names, root, middle, end, upper, lower }: LimbSeen): Moves {
  if (middle === null) return [];
  const knee = root === null || upper === null ? middle : onTheWay(root, middle, upper);
  const moves: [JointName, Point][] = knee === middle ? [] : [[names.middle, knee]];
  if (end === null || lower === null) return moves;
  const came = { x: end.x + knee.x - middle.x, y: end.y + knee.y - middle.y };
  return [...moves, [names.end, onTheWay(knee, came, lower)]];
}

function onTheWay(from: Point, to: Point, length: number): Point {
  const apart = distance(from, to);
  if (apart === 0) return { x: from.x, y: from.y + length };
  const share = length / apart;
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}
