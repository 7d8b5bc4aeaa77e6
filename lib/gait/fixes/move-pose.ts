import {
  BODY,
  footJoints,
  hundredth,
  JOINTS,
  type JointName,
  limbJoint,
  type Mark,
  markOf,
  type PoseMarks,
  SIDES,
  type Side,
  shiftedMarks,
  solvedKnee,
  type ViewMarks,
} from "../../body";
import { VIEWS } from "../../geometry";
import type { FixChange } from "../fix";
import type { WalkPanel } from "../walk";

/** Marks after a move. `short` names legs that would have to be longer, by how much: panel units. */
export interface MovedPose {
  readonly marks: PoseMarks;
  readonly short: readonly { readonly side: Side; readonly by: number }[];
}

/** Panel units: forward to the side view's right, up, aside to the front view's right. */
export interface Way {
  readonly forward: number;
  readonly up: number;
  readonly aside: number;
}

/**
 * The hips and everything above them moved, the feet kept and the knees solved: thigh and shank keep
 * their lengths and the knee its side. Where a leg does not reach it is laid out straight.
 *
 * Units:   panel units
 * Errors:  none; joints that are not marked are passed over
 */
export function moveBody({ marks }: Pick<WalkPanel, "marks">, way: Way): MovedPose {
  const side = shiftedMarks(marks.side, BODY, { x: way.forward, y: -way.up });
  const front = shiftedMarks(marks.front, BODY, { x: way.aside, y: -way.up });
  return withKnees(marks, { side, front }, way);
}

/**
 * One foot moved, hips kept and its knee solved; the front view's foot follows in height.
 *
 * Units:   panel units
 */
export function moveFoot(
  { marks }: Pick<WalkPanel, "marks">,
  foot: Side,
  { forward, up }: Pick<Way, "forward" | "up">,
): MovedPose {
  const joints = footJoints(foot);
  const side = shiftedMarks(marks.side, joints, { x: forward, y: -up });
  const front = shiftedMarks(marks.front, joints, { x: 0, y: -up });
  return withKnees(marks, { side, front }, { forward: 0, up: 0, aside: 0 });
}

/** Marks of some joints put elsewhere in the side view, the knees solved, the front view following. */
export function placeJoints(
  { marks }: Pick<WalkPanel, "marks">,
  to: ReadonlyMap<JointName, { readonly x: number; readonly y: number }>,
): MovedPose {
  const side: Partial<Record<JointName, Mark>> = { ...marks.side };
  let front = marks.front;
  for (const [joint, { x, y }] of to) {
    const mark = markOf(marks.side, joint);
    if (mark === null) continue;
    side[joint] = { ...mark, x: hundredth(x), y: hundredth(y) };
    front = shiftedMarks(front, [joint], { x: 0, y: y - mark.y });
  }
  return withKnees(marks, { side, front }, { forward: 0, up: 0, aside: 0 });
}

function withKnees(before: PoseMarks, after: PoseMarks, way: Way): MovedPose {
  let { side, front } = after;
  const short: { side: Side; by: number }[] = [];
  for (const leg of SIDES) {
    const joint = limbJoint(leg, "knee");
    const knee = markOf(before.side, joint);
    const solved = solvedKnee(before.side, side, leg);
    if (solved.kind === "solved") side = { ...side, [joint]: rounded(solved.knee) };
    if (solved.kind === "out-of-reach" && knee !== null) {
      side = { ...side, [joint]: straightened(before.side, side, leg, knee) };
      short.push({ side: leg, by: solved.beyond ?? 0 });
    }
    if (solved.kind === "as-it-is" && !hasFoot(before.side, leg)) {
      side = shiftedMarks(side, [joint], { x: way.forward, y: -way.up }); // a knee without a foot hangs on its hip
    }
    front = frontKnee(before, { side, front }, leg, way);
  }
  return { marks: { side, front }, short };
}

/** The knee on the line from hip to foot, as far along it as the bones have it. */
function straightened(before: ViewMarks, after: ViewMarks, side: Side, knee: Mark): Mark {
  const hip = markOf(after, limbJoint(side, "hip"));
  const foot = footEnd(after, side);
  const hadHip = markOf(before, limbJoint(side, "hip"));
  const hadFoot = footEnd(before, side);
  if (hip === null || foot === null || hadHip === null || hadFoot === null) return knee;
  const thigh = Math.hypot(knee.x - hadHip.x, knee.y - hadHip.y);
  const shank = Math.hypot(hadFoot.x - knee.x, hadFoot.y - knee.y);
  const share = thigh / (thigh + shank);
  return rounded({
    ...knee,
    x: hip.x + share * (foot.x - hip.x),
    y: hip.y + share * (foot.y - hip.y),
  });
}

/** From ahead a knee is as high as from the side, and goes aside by the share of the leg it lies up. */
function frontKnee(before: PoseMarks, after: PoseMarks, side: Side, { aside, up }: Way): ViewMarks {
  const joint = limbJoint(side, "knee");
  const knee = markOf(before.front, joint);
  const hip = markOf(before.front, limbJoint(side, "hip"));
  if (knee === null) return after.front;
  const foot = footEnd(before.front, side);
  const share =
    hip === null || foot === null || foot.y === hip.y ? 1 : (foot.y - knee.y) / (foot.y - hip.y);
  const was = markOf(before.side, joint);
  const is = markOf(after.side, joint);
  const down = was === null || is === null ? -up * share : is.y - was.y;
  return shiftedMarks(after.front, [joint], { x: aside * share, y: down });
}

function footEnd(marks: ViewMarks, side: Side): Mark | null {
  return markOf(marks, limbJoint(side, "ankle")) ?? markOf(marks, limbJoint(side, "heel"));
}

function hasFoot(marks: ViewMarks, side: Side): boolean {
  return footEnd(marks, side) !== null;
}

function rounded(mark: Mark): Mark {
  return { ...mark, x: hundredth(mark.x), y: hundredth(mark.y) };
}

/** What turns a panel's marks into others, joint by joint. */
export function marksMoved({ id, marks }: WalkPanel, after: PoseMarks): readonly FixChange[] {
  return VIEWS.flatMap((view): FixChange[] => {
    const moved = JOINTS.flatMap((joint) => {
      const was = marks[view][joint];
      const is = after[view][joint];
      const same = was === undefined || is === undefined || (was.x === is.x && was.y === is.y);
      return same ? [] : [{ joint, x: is.x, y: is.y }];
    });
    return moved.length === 0 ? [] : [{ kind: "move-marks", panel: id, view, marks: moved }];
  });
}
