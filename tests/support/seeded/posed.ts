import {
  type JointName,
  LIMB_JOINTS,
  limbJoint,
  type Mark,
  markOf,
  SIDES,
  type Side,
  solvedKnee,
  type ViewMarks,
} from "../../../lib/body";
import { placeOf, type Walk, type WalkPanel, walkLegLength } from "../../../lib/gait";
import type { View } from "../../../lib/geometry";

/** Reads and moves marks in leg lengths, as a hand would draw: feet stay, knees follow, bones keep their length. */

export const FOOT_PARTS = ["ankle", "heel", "ball", "toe"] as const;
export const footOf = (side: Side): JointName[] => FOOT_PARTS.map((part) => limbJoint(side, part));
const KNEES: readonly JointName[] = ["left-knee", "right-knee"];
const FEET: readonly JointName[] = SIDES.flatMap(footOf);
/** Everything that the legs carry. */
const CARRIED: readonly JointName[] = [
  "head",
  "neck",
  ...SIDES.flatMap((side) =>
    LIMB_JOINTS.filter((part) => ["shoulder", "elbow", "wrist", "hip"].includes(part)).map((part) =>
      limbJoint(side, part),
    ),
  ),
];
const EVERYTHING: readonly JointName[] = [...CARRIED, ...KNEES, ...FEET];

/** Leg lengths: ahead, up and to the walker's right. */
export interface By {
  readonly ahead?: number;
  readonly up?: number;
  readonly right?: number;
}

export function panelOf(from: Walk, name: string): WalkPanel {
  const panel = from.panels.find(({ id }) => id === name);
  if (panel === undefined) throw new Error(`no panel ${name}`);
  return panel;
}

/** The leg of the walk as it was before anything moved. Panel units. */
export function legOf(from: Walk): number {
  const known = legs.get(from);
  if (known !== undefined) return known;
  const leg = walkLegLength(from);
  if (leg.kind === "cannot-tell") throw new Error(`a leg needs ${leg.needs}`);
  legs.set(from, leg.value);
  return leg.value;
}

const legs = new WeakMap<Walk, number>();

function markIn(from: Walk, name: string, view: View, joint: JointName): Mark {
  const mark = markOf(panelOf(from, name).marks[view], joint);
  if (mark === null) throw new Error(`no ${joint} on ${name}`);
  return mark;
}

/** Ground x of a mark, leg lengths. */
export function alongOf(from: Walk, name: string, joint: JointName): number {
  const place = placeOf(panelOf(from, name), from);
  return place + (markIn(from, name, "side", joint).x - 360) / legOf(from);
}

/** Height of a mark over the ground line, leg lengths. */
export function heightOf(from: Walk, name: string, joint: JointName, view: View = "side"): number {
  return (1080 - markIn(from, name, view, joint).y) / legOf(from);
}

/** Where a mark is across the walk, leg lengths to the walker's right. */
export function acrossOf(from: Walk, name: string, joint: JointName): number {
  return (360 - markIn(from, name, "front", joint).x) / legOf(from);
}

const meanOf = (read: (joint: JointName) => number) => (read("left-hip") + read("right-hip")) / 2;

export const hipsAlong = (from: Walk, name: string) => meanOf((one) => alongOf(from, name, one));
export const hipsUp = (from: Walk, name: string) => meanOf((one) => heightOf(from, name, one));
export const hipsAcross = (from: Walk, name: string) => meanOf((one) => acrossOf(from, name, one));

/** The lowest mark of a sole, leg lengths over the ground. */
export function lowestOf(from: Walk, name: string, side: Side): number {
  const soles = ["heel", "ball", "toe"] as const;
  return Math.min(...soles.map((part) => heightOf(from, name, limbJoint(side, part))));
}

/** Marks of a panel moved, in both views, and nothing else. */
export function moveMarks(
  from: Walk,
  name: string,
  joints: readonly JointName[],
  { ahead = 0, up = 0, right = 0 }: By,
): Walk {
  const leg = legOf(from);
  const shifted = (marks: ViewMarks, x: number): ViewMarks =>
    Object.fromEntries(
      Object.entries(marks).map(([joint, mark]) => [
        joint,
        joints.includes(joint as JointName)
          ? { ...mark, x: mark.x + x * leg, y: mark.y - up * leg }
          : mark,
      ]),
    );
  const { side, front } = panelOf(from, name).marks;
  return withMarks(from, name, { side: shifted(side, ahead), front: shifted(front, -right) });
}

function withMarks(from: Walk, name: string, marks: WalkPanel["marks"]): Walk {
  const panels = from.panels.map((panel) => (panel.id === name ? { ...panel, marks } : panel));
  const changed = { ...from, panels };
  legs.set(changed, legOf(from));
  return changed;
}

/** The body moved over feet that stay: knees follow, and thigh and shank keep their lengths while they reach. */
export function carry(from: Walk, name: string, by: By): Walk {
  return kneesSolved(from, moveMarks(from, name, CARRIED, by), name);
}

/** Marks of a foot moved, the knee following. */
export function moveFoot(from: Walk, name: string, side: Side, by: By): Walk {
  return kneesSolved(from, moveMarks(from, name, footOf(side), by), name);
}

/** The whole drawing moved. */
export function moveAll(from: Walk, name: string, by: By): Walk {
  return moveMarks(from, name, EVERYTHING, by);
}

/** Knees that follow hips and feet; thigh and shank keep their lengths while the leg reaches. */
export function kneesSolved(before: Walk, after: Walk, name: string): Walk {
  const was = panelOf(before, name).marks;
  let now = panelOf(after, name).marks;
  for (const side of SIDES) now = kneeSolved(was, now, side);
  return withMarks(after, name, now);
}

function kneeSolved(was: WalkPanel["marks"], now: WalkPanel["marks"], side: Side) {
  const joint = limbJoint(side, "knee");
  const solved = solvedKnee(was.side, now.side, side);
  const old = was.side[joint];
  if (solved.kind === "as-it-is" || old === undefined) return now;
  const knee = solved.kind === "solved" ? solved.knee : stretched(now.side, side, old);
  const seen = was.front[joint];
  const hip = limbJoint(side, "hip");
  // From ahead the knee goes half as far sideways as the hip, and as high as from the side.
  const aside = ((now.front[hip]?.x ?? 0) - (was.front[hip]?.x ?? 0)) / 2;
  const front =
    seen === undefined
      ? now.front
      : { ...now.front, [joint]: { ...seen, x: seen.x + aside, y: seen.y + knee.y - old.y } };
  return { side: { ...now.side, [joint]: knee }, front };
}

/** A leg that cannot reach is drawn straight, and too long. */
function stretched(marks: ViewMarks, side: Side, knee: Mark): Mark {
  const hip = markOf(marks, limbJoint(side, "hip")) ?? knee;
  const ankle = markOf(marks, limbJoint(side, "ankle")) ?? knee;
  return { x: (hip.x + ankle.x) / 2, y: (hip.y + ankle.y) / 2, precision: knee.precision };
}

/** The first contact closes the loop as the last one: what is done to it is done to both. */
export function atBoth(from: Walk, name: string, change: (into: Walk, name: string) => Walk): Walk {
  const done = change(from, name);
  const first = from.panels.find(({ pose }) => pose === "contact")?.id;
  return name === first ? change(done, "end") : done;
}

/** The contact that ends a side's step. */
export function nextOf(from: Walk, side: Side): `${Side} contact` | "end" {
  const other: Side = side === "left" ? "right" : "left";
  const at = (name: string) => from.panels.findIndex(({ id }) => id === name);
  return at(`${side} contact`) < at(`${other} contact`) ? `${other} contact` : "end";
}
