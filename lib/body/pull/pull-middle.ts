import { distance, nearestInDiscs, type Point } from "../../geometry";
import { footJoints } from "../body-parts";
import type { JointName, Side } from "../joint";
import type { ViewMarks } from "../mark";
import { markOf } from "../mark-of";
import { putMark, shiftedMarks } from "../shifted-marks";
import { limbJoint } from "../side";
import { bendOf } from "../two-bone";
import { armOf, discs, footEnd, type Limb, legOf, type Seen } from "./limb";
import { movedBody } from "./move-body";
import { toward } from "./turn-chest";

/** An elbow pulled: it turns about its shoulder and the forearm comes along. */
export function pulledElbow(before: ViewMarks, side: Side, to: Point, seen: Seen): ViewMarks {
  const joint = limbJoint(side, "elbow");
  const wrist = limbJoint(side, "wrist");
  const arm = armOf(before, side, seen);
  if (arm !== null) return turnedLimb(before, arm, to, [wrist]);
  return aboutOne(before, joint, limbJoint(side, "shoulder"), to, [wrist]);
}

/**
 * A knee pulled. Of a free leg it turns about its hip and shank and foot come along; of a leg that
 * stands it turns about its ankle and the body comes along.
 */
export function pulledKnee(
  before: ViewMarks,
  side: Side,
  to: Point,
  { pinned, seen }: { readonly pinned: readonly Side[]; readonly seen: Seen },
): ViewMarks {
  const joint = limbJoint(side, "knee");
  const leg = legOf(before, side, seen);
  if (leg === null) {
    const hip = limbJoint(side, "hip");
    const foot = footEnd(before, side);
    if (markOf(before, hip) !== null) return aboutOne(before, joint, hip, to, []);
    return foot === null ? putMark(before, joint, to) : aboutOne(before, joint, foot, to, []);
  }
  if (seen.view === "front" || !pinned.includes(side)) {
    return turnedLimb(before, leg, to, footJoints(side));
  }
  const knee = toward(leg.end, to, leg.lower);
  if (knee === null) return before;
  const hip = farEnd(
    knee,
    { from: leg.end, was: leg.root, length: leg.upper },
    (at) => bendOf(at, knee, leg.end) === -leg.bend,
  );
  const way = { x: hip.x - leg.root.x, y: hip.y - leg.root.y };
  return movedBody(before, way, pinned, seen);
}

/** The middle of a limb turned about its root, its outer part carried along. */
function turnedLimb(
  before: ViewMarks,
  limb: Limb,
  to: Point,
  outer: readonly JointName[],
): ViewMarks {
  const { root, end, middle, names } = limb;
  if (limb.view === "front") {
    return putMark(before, names.middle, nearestInDiscs(to, discs(limb, root, end)));
  }
  const at = toward(root, to, limb.upper) ?? middle;
  const carried = { x: end.x + at.x - middle.x, y: end.y + at.y - middle.y };
  const held = farEnd(
    at,
    { from: root, was: carried, length: limb.lower },
    (tip) => bendOf(root, at, tip) === -limb.bend,
  );
  const moved = shiftedMarks(before, outer, { x: held.x - end.x, y: held.y - end.y });
  return putMark(moved, names.middle, at);
}

interface Far {
  readonly from: Point;
  readonly was: Point;
  readonly length: number;
}

/** The bone beyond a joint in its own direction, or straight on where it would bend the wrong way. */
function farEnd(at: Point, { from, was, length }: Far, isWrong: (end: Point) => boolean): Point {
  const straight = {
    x: at.x + ((at.x - from.x) * length) / distance(from, at),
    y: at.y + ((at.y - from.y) * length) / distance(from, at),
  };
  const own = toward(at, was, length) ?? straight;
  return isWrong(own) ? straight : own;
}

/** A joint on its circle about the only neighbour that is marked; without it, where it was pulled. */
function aboutOne(
  before: ViewMarks,
  joint: JointName,
  neighbour: JointName,
  to: Point,
  outer: readonly JointName[],
): ViewMarks {
  const mark = markOf(before, joint);
  const centre = markOf(before, neighbour);
  if (mark === null) return before;
  const at = centre === null ? to : (toward(centre, to, distance(centre, mark)) ?? mark);
  return shiftedMarks(before, [joint, ...outer], { x: at.x - mark.x, y: at.y - mark.y });
}
