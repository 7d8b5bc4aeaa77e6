import {
  bendOf,
  carriersOf,
  JOINTS,
  type JointName,
  limbJoint,
  type Mark,
  markOf,
  middleJoint,
  type PoseMarks,
  putMark,
  SIDES,
  type Side,
  shiftedMarks,
  type ViewMarks,
} from "../../body";
import { gathered } from "../../gathered";
import type { Point } from "../../geometry";
import type { Sized } from "../figure/sized";
import type { WalkPanel } from "../walk";
import { snapToGround } from "./snap-to-ground";

/**
 * A guess that agrees with what is marked on the panel: a joint goes along with the marked one that carries
 * it, feet that bear stand on the ground, knees are where thigh and shank have them, and the front view is
 * as high as the side view.
 *
 * Units:   panel units
 */
export function fitted(guess: PoseMarks, panel: WalkPanel, sized: Sized): PoseMarks {
  const { side: own, front: ownFront } = panel.marks;
  const along = atHeights(alongWith(guess.side, own), ownFront, own);
  const side = bentKnees(onGround(along, panel, sized.legUnits), own, sized);
  return { side, front: atHeights(alongWith(guess.front, ownFront), side, ownFront) };
}

/** Every joint moved as far as the nearest marked one that carries it lies from where it was guessed. */
function alongWith(guess: ViewMarks, own: ViewMarks): ViewMarks {
  return JOINTS.reduce(
    (marks, joint) => shiftedMarks(marks, [joint], wayOf(guess, own, joint)),
    guess,
  );
}

function wayOf(guess: ViewMarks, own: ViewMarks, joint: JointName): Point {
  for (const carriers of carriersOf(joint)) {
    const ways = gathered(carriers, (name) => {
      const drawn = markOf(own, name);
      const guessed = markOf(guess, name);
      return drawn === null || guessed === null
        ? []
        : [{ x: drawn.x - guessed.x, y: drawn.y - guessed.y }];
    });
    if (ways.length === 0) continue;
    return {
      x: ways.reduce((sum, { x }) => sum + x, 0) / ways.length,
      y: ways.reduce((sum, { y }) => sum + y, 0) / ways.length,
    };
  }
  return { x: 0, y: 0 };
}

/** Joints as high as another view has them, save those that are marked. */
function atHeights(marks: ViewMarks, heights: ViewMarks, own: ViewMarks): ViewMarks {
  return JOINTS.reduce((level, joint) => {
    const mark = markOf(level, joint);
    const height = markOf(heights, joint);
    if (mark === null || height === null || markOf(own, joint) !== null) return level;
    return putMark(level, joint, { x: mark.x, y: height.y });
  }, marks);
}

function onGround(marks: ViewMarks, panel: WalkPanel, legUnits: number): ViewMarks {
  return JOINTS.reduce((grounded, joint) => {
    const mark = markOf(grounded, joint);
    if (mark === null || markOf(panel.marks.side, joint) !== null) return grounded;
    return putMark(grounded, joint, snapToGround(mark, { ...panel, joint }, legUnits));
  }, marks);
}

function bentKnees(marks: ViewMarks, own: ViewMarks, sized: Sized): ViewMarks {
  return SIDES.reduce((bent, side) => {
    const joint = limbJoint(side, "knee");
    const knee = markOf(own, joint) === null ? kneeOf(bent, side, sized) : null;
    return knee === null ? bent : putMark(bent, joint, knee);
  }, marks);
}

function kneeOf(marks: ViewMarks, side: Side, { size, legUnits }: Sized): Point | null {
  const at = (part: "hip" | "knee" | "ankle"): Mark | null => markOf(marks, limbJoint(side, part));
  const [hip, knee, ankle] = [at("hip"), at("knee"), at("ankle")];
  if (hip === null || knee === null || ankle === null) return null;
  const bend = bendOf(hip, knee, ankle) ?? FORWARD;
  const [upper, lower] = [size.thigh * legUnits, size.shank * legUnits];
  const solved = middleJoint(hip, ankle, { upper, lower, bend });
  if (solved !== null) return solved;
  const share = upper / (upper + lower); // out of reach: straight
  return { x: hip.x + share * (ankle.x - hip.x), y: hip.y + share * (ankle.y - hip.y) };
}

/** The side view's walker goes to the page's right, and so do his knees. */
const FORWARD = -1;
