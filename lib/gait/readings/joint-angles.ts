import {
  type JointName,
  type LimbJoint,
  limbJoint,
  type Mark,
  markOf,
  type Side,
  type ViewMarks,
} from "../../body";
import { distance, rootSumSquare } from "../../geometry";
import { type Answer, answerOf } from "../answer";

/*
 * Angles are those of the drawn plane: a limb that points at the viewer is foreshortened, and so is what it
 * tells. Source of the signs: Winter (2009), Biomechanics and Motor Control of Human Movement, ch. 3.
 */

/** Knee bend from the side: the thigh's lean less the shank's, so bent is positive, the wrong way negative. */
export function kneeBend(marks: ViewMarks, side: Side): Answer {
  const names = limb(side, "hip", "knee", "ankle");
  return readAngle(marks, names, sideNeeds(side, "hip, knee and ankle"), ([hip, knee, ankle]) => ({
    value: leanForward(hip, knee) - leanForward(knee, ankle),
    plusMinus: rootSumSquare(slack(hip, knee), slack(knee, ankle)),
  }));
}

/**
 * Hip bend from the side: thigh against trunk, the thigh ahead positive. The trunk stands in for the pelvis,
 * whose own tilt no marks tell, so clinical tables read some 12° more.
 */
export function hipBend(marks: ViewMarks, side: Side): Answer {
  const trunk = trunkLean(marks);
  const needs = sideNeeds(side, "hip and knee, and the neck or a shoulder,");
  if (trunk.kind === "cannot-tell") return { kind: "cannot-tell", needs };
  return readAngle(marks, limb(side, "hip", "knee"), needs, ([hip, knee]) => ({
    value: leanForward(hip, knee) + trunk.value,
    plusMinus: rootSumSquare(slack(hip, knee), trunk.plusMinus),
  }));
}

/** Ankle bend from the side: the foot against the shank, less a right angle; toe drawn up positive. */
export function ankleBend(marks: ViewMarks, side: Side): Answer {
  const pitch = footPitch(marks, side);
  const needs = sideNeeds(side, "knee, ankle, heel and ball or toe");
  if (pitch.kind === "cannot-tell") return { kind: "cannot-tell", needs };
  return readAngle(marks, limb(side, "knee", "ankle"), needs, ([knee, ankle]) => ({
    value: pitch.value - leanForward(knee, ankle),
    plusMinus: rootSumSquare(slack(knee, ankle), pitch.plusMinus),
  }));
}

/** Elbow bend from the side: the forearm's lean less the upper arm's; bent is positive. */
export function elbowBend(marks: ViewMarks, side: Side): Answer {
  const names = limb(side, "shoulder", "elbow", "wrist");
  const needs = sideNeeds(side, "shoulder, elbow and wrist");
  return readAngle(marks, names, needs, ([shoulder, elbow, wrist]) => ({
    value: leanForward(elbow, wrist) - leanForward(shoulder, elbow),
    plusMinus: rootSumSquare(slack(shoulder, elbow), slack(elbow, wrist)),
  }));
}

/** Foot pitch from the side: heel to ball over the ground, or heel to toe; toe up is positive. */
export function footPitch(marks: ViewMarks, side: Side): Answer {
  const front = markOf(marks, limbJoint(side, "ball")) === null ? "toe" : "ball";
  return footPitchTo(marks, side, front);
}

/** The same, heel to the point that is named. */
export function footPitchTo(marks: ViewMarks, side: Side, front: "ball" | "toe"): Answer {
  const needs = sideNeeds(side, "heel and ball or toe");
  return readAngle(marks, limb(side, "heel", front), needs, ([heel, tip]) => ({
    value: Math.atan2(heel.y - tip.y, tip.x - heel.x),
    plusMinus: slack(heel, tip),
  }));
}

/** Lean of the trunk from the side: hips to shoulders, or to the neck without them; forward positive. */
export function trunkLean(marks: ViewMarks): Answer {
  const needs = "a hip, and a shoulder or the neck, marked in the side view";
  const hips = middle(marks, "left-hip", "right-hip");
  const top = middle(marks, "left-shoulder", "right-shoulder") ?? markOf(marks, "neck");
  if (hips === null || top === null) return { kind: "cannot-tell", needs };
  const lean = Math.atan2(top.x - hips.x, hips.y - top.y);
  return answerOf(turned(lean), slack(hips, top), "rad", needs);
}

/** Tilt of the hip line from the front: above 0 where the left one is lower. */
export function pelvisTilt(marks: ViewMarks): Answer {
  return tilt(marks, "hip");
}

/** Tilt of the shoulder line from the front: above 0 where the left one is lower. */
export function shoulderTilt(marks: ViewMarks): Answer {
  return tilt(marks, "shoulder");
}

function tilt(marks: ViewMarks, joint: "hip" | "shoulder"): Answer {
  const needs = `both ${joint}s marked in the front view`;
  return readAngle(marks, [`left-${joint}`, `right-${joint}`], needs, ([left, right]) => ({
    value: Math.atan2(left.y - right.y, Math.abs(left.x - right.x)),
    plusMinus: slack(left, right),
  }));
}

interface Angle {
  readonly value: number;
  readonly plusMinus: number;
}

/** Reads an angle off joints that must all be marked. Three at most: what is asked for is there. */
function readAngle(
  marks: ViewMarks,
  joints: readonly JointName[],
  needs: string,
  read: (points: readonly [Mark, Mark, Mark]) => Angle,
): Answer {
  const found = joints.map((joint) => markOf(marks, joint)).filter((mark) => mark !== null);
  const [first, second, third = second] = found;
  if (found.length < joints.length || first === undefined) return { kind: "cannot-tell", needs };
  if (second === undefined || third === undefined) return { kind: "cannot-tell", needs };
  const { value, plusMinus } = read([first, second, third]);
  return answerOf(turned(value), plusMinus, "rad", needs);
}

function limb(side: Side, ...joints: readonly LimbJoint[]): readonly JointName[] {
  return joints.map((joint) => limbJoint(side, joint));
}

function sideNeeds(side: Side, what: string): string {
  return `the ${side} ${what} marked in the side view`;
}

/** How far a limb's lower end stands ahead of its upper end, from hanging straight. Radians. */
function leanForward(upper: Mark, lower: Mark): number {
  return Math.atan2(lower.x - upper.x, lower.y - upper.y);
}

/** ± of a line's direction: what its ends may move sideways, over its length. Radians. */
function slack(from: Mark, to: Mark): number {
  return rootSumSquare(from.precision, to.precision) / distance(from, to);
}

function middle(marks: ViewMarks, one: JointName, other: JointName): Mark | null {
  const [left, right] = [markOf(marks, one), markOf(marks, other)];
  if (left === null || right === null) return left ?? right;
  const precision = rootSumSquare(left.precision, right.precision) / 2;
  return { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2, precision };
}

/** An angle brought into −π..π. */
function turned(angle: number): number {
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}
