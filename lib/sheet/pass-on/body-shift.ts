import {
  BODY,
  type JointName,
  limbJoint,
  markOf,
  PANEL,
  SIDES,
  type Side,
  shiftedMarks,
  type ViewMarks,
} from "../../body";
import { walkLegLength } from "../../gait";
import { VIEWS } from "../../geometry";
import type { Panel } from "../sheet";
import { frontFollows, withKnee } from "./leg-follows";
import { isRefusal, type PassOn, passingTo } from "./passing";

/** Where the body goes. Panel units: forward to the side view's right, up, aside to the front view's right. */
export interface BodyShift {
  readonly forward: number;
  readonly up: number;
  readonly aside: number;
}

const KNEES: readonly JointName[] = SIDES.map((side) => limbJoint(side, "knee"));

/**
 * The pose with its hips and everything above them raised, lowered or shifted, the feet kept and the
 * knees solved. The front view follows in height; from ahead a knee goes aside as far as it lies up
 * the leg.
 *
 * Units:   panel units
 * Errors:  none; a leg that would not reach answers "cannot"
 */
export function bodyShift(panel: Panel, { forward, up, aside }: BodyShift): PassOn {
  const { marks } = panel;
  if (!VIEWS.some((view) => SIDES.some((side) => hip(marks[view], side) !== null))) {
    return { kind: "cannot-tell", needs: "the hips marked" };
  }
  const leg = walkLegLength({ panels: [panel] });
  const legUnits = leg.kind === "value" ? leg.value : PANEL.plainLeg;
  let side = shiftedMarks(marks.side, BODY, { x: forward, y: -up });
  for (const one of SIDES) {
    const solved = withKnee(marks.side, side, one, legUnits);
    if (isRefusal(solved)) return solved;
    side = solved;
    // A knee whose foot is not marked hangs on its hip.
    if (hip(marks.side, one) !== null && !hasFoot(marks.side, one)) {
      side = shiftedMarks(side, [limbJoint(one, "knee")], { x: forward, y: -up });
    }
  }
  const followed = frontFollows(marks, side, KNEES);
  let front = shiftedMarks(followed.front, BODY, { x: aside, y: -up });
  for (const one of SIDES)
    front = frontKnee(marks.front, front, one, { aside, up, side: marks.side });
  return passingTo(panel, { side, front });
}

const hip = (marks: ViewMarks, side: Side) => markOf(marks, limbJoint(side, "hip"));

function footEnd(marks: ViewMarks, side: Side) {
  return markOf(marks, limbJoint(side, "ankle")) ?? markOf(marks, limbJoint(side, "heel"));
}

const hasFoot = (marks: ViewMarks, side: Side): boolean => footEnd(marks, side) !== null;

/** Seen from ahead, a knee goes by the share of the leg that it lies above the foot. */
function frontKnee(
  before: ViewMarks,
  after: ViewMarks,
  side: Side,
  shift: { readonly aside: number; readonly up: number; readonly side: ViewMarks },
): ViewMarks {
  const joint = limbJoint(side, "knee");
  const knee = markOf(before, joint);
  const top = hip(before, side);
  if (knee === null || top === null) return after;
  const foot = footEnd(before, side);
  const share = foot === null || foot.y === top.y ? 1 : (foot.y - knee.y) / (foot.y - top.y);
  // Its height is the side view's to say, where that has the knee.
  const up = markOf(shift.side, joint) === null ? shift.up * share : 0;
  return shiftedMarks(after, [joint], { x: shift.aside * share, y: -up });
}
