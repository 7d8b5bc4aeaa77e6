import { distance, type Point } from "../../geometry";
import { footJoints } from "../body-parts";
import type { JointName, Side } from "../joint";
import type { ViewMarks } from "../mark";
import { markOf } from "../mark-of";
import { putMark, shiftedMarks } from "../shifted-marks";
import { limbJoint } from "../side";
import { armOf, footEnd, heldEnd, type Limb, legOf, middleOf, reachOf, type Seen } from "./limb";
import { direction, toward, turnedMarks } from "./turn-chest";

/** A wrist pulled: shoulder kept, elbow solved. */
export function pulledWrist(before: ViewMarks, side: Side, to: Point, seen: Seen): ViewMarks {
  const joint = limbJoint(side, "wrist");
  const arm = armOf(before, side, seen);
  if (arm !== null) {
    const end = heldEnd(arm, arm.root, to);
    return putMark(putMark(before, joint, end), arm.names.middle, middleOf(arm, arm.root, end));
  }
  const elbow = markOf(before, limbJoint(side, "elbow"));
  const wrist = markOf(before, joint);
  if (elbow === null || wrist === null) return putMark(before, joint, to);
  return putMark(before, joint, toward(elbow, to, distance(elbow, wrist)) ?? wrist);
}

/**
 * A free foot pulled: by its ankle or ball it moves as a body, by its heel it turns about the ball, by
 * its toe about the heel; the knee is solved. Without an ankle the heel moves the foot, and seen from
 * ahead every part does.
 */
export function pulledFoot(
  before: ViewMarks,
  side: Side,
  joint: JointName,
  to: Point,
  seen: Seen,
): ViewMarks {
  const mark = markOf(before, joint);
  if (mark === null) return before;
  const leg = legOf(before, side, seen);
  const turn = seen.view === "front" ? null : turnOf(before, side, joint, to);
  if (turn === null) {
    const by = { x: to.x - mark.x, y: to.y - mark.y };
    return movedFoot(before, side, leg, by);
  }
  return turnedFoot(before, leg, turn);
}

/** The whole foot by a way, as far as its leg reaches. */
function movedFoot(before: ViewMarks, side: Side, leg: Limb | null, by: Point): ViewMarks {
  if (leg === null) return shiftedMarks(before, footJoints(side), by);
  const end = heldEnd(leg, leg.root, { x: leg.end.x + by.x, y: leg.end.y + by.y });
  const way = { x: end.x - leg.end.x, y: end.y - leg.end.y };
  const moved = shiftedMarks(before, footJoints(side), way);
  return putMark(moved, leg.names.middle, middleOf(leg, leg.root, end));
}

interface Turn {
  readonly about: Point;
  readonly by: number;
  readonly joints: readonly JointName[];
}

/** How a pull turns a foot; null where it moves it. */
function turnOf(marks: ViewMarks, side: Side, joint: JointName, to: Point): Turn | null {
  const [ankle, heel, ball, toe] = footJoints(side);
  if (ankle === undefined || heel === undefined || ball === undefined || toe === undefined)
    return null;
  const at = (name: JointName) => markOf(marks, name);
  const mark = at(joint);
  if (joint === toe) {
    const about = at(heel) ?? at(ankle);
    const joints = at(heel) === null ? [ball, toe] : [ankle, ball, toe];
    return turning(mark, about, to, joints);
  }
  // Toes stay where they are: a foot bends at its ball.
  if (joint === heel && footEnd(marks, side) !== heel) {
    return turning(mark, at(ball) ?? at(toe), to, [ankle, heel]);
  }
  return null;
}

function turning(
  mark: Point | null,
  about: Point | null,
  to: Point,
  joints: readonly JointName[],
): Turn | null {
  if (mark === null || about === null) return null;
  if (distance(about, mark) === 0 || distance(about, to) === 0) return null;
  const whole = direction(about, to) - direction(about, mark);
  const by = Math.atan2(Math.sin(whole), Math.cos(whole)); // the short way round
  return { about, by, joints };
}

const HALVINGS = 24; // to a ten-millionth of the turn

/** A foot turned as far as its leg reaches. */
function turnedFoot(before: ViewMarks, leg: Limb | null, { about, by, joints }: Turn): ViewMarks {
  if (leg === null) return turnedMarks(before, joints, about, by);
  const at = (share: number) => turnedMarks(before, joints, about, share * by);
  const endOf = (marks: ViewMarks) => markOf(marks, leg.names.end) ?? leg.end;
  const { least, most } = reachOf(leg);
  const fits = (share: number) => {
    const far = distance(leg.root, endOf(at(share)));
    return far >= least && far <= most;
  };
  let [good, bad] = [0, 1];
  if (fits(1)) good = 1;
  for (let halving = 0; good < 1 && halving < HALVINGS; halving++) {
    const share = (good + bad) / 2;
    if (fits(share)) good = share;
    else bad = share;
  }
  const turned = at(good);
  return putMark(turned, leg.names.middle, middleOf(leg, leg.root, endOf(turned)));
}
