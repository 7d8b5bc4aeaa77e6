import type { JointName, LimbJoint, Mark, Side, ViewMarks } from "../../lib/body";
import type { Walk, WalkKind, WalkPanel } from "../../lib/gait";
import { VIEWS, type View } from "../../lib/geometry";
import type { StepPose } from "../../lib/motion";

/** Panels of the built walk, in frame order: two steps and the contact that ends the second. */
export type PanelName = "stand" | `${Side} ${StepPose}` | "end";

const LEG = 420; // panel units
const STEP = 0.72; // leg lengths
const FRAMES = 12; // a step, unless asked otherwise
const FIRST = 13; // frame of the first contact; the stand is held before it
const ADVANCE = STEP / FRAMES;

/** Hip heights of a walk that the trade calls sound, leg lengths. */
const HIPS: Readonly<Record<StepPose, number>> = {
  contact: 0.93,
  down: 0.91,
  passing: 0.95,
  up: 0.96,
};
const AT: Readonly<Record<StepPose, number>> = { contact: 0, down: 0.25, passing: 0.5, up: 0.75 };
const POSES: readonly StepPose[] = ["contact", "down", "passing", "up"];

/** Frames of the left step and of the right. */
export interface StepFrames {
  readonly left: number;
  readonly right: number;
}

/** Where the heel of the foot that carries stands, in steps from the body at contact: hips 9 % ahead at passing. */
const HEEL = 22 / 72;
const TOE_UP = 0.1; // leg lengths, of the foot that lands
const HEEL_UP = (20 * Math.PI) / 180; // of the foot behind, about its ball
const BONE = 0.46; // leg lengths: thigh, and shank

/** Seen from the front, leg lengths: half between the feet, half between the hips. */
const HALF = { feet: 0.055, hips: 0.095 } as const;
/** How far the hips are shifted toward the foot that carries, leg lengths. */
const SHIFT: Readonly<Record<StepPose, number>> = {
  contact: 0,
  down: 0.01,
  passing: 0.025,
  up: 0.02,
};

/** How the walk is drawn: its kind and how exactly its marks were placed (share of a leg). */
export interface Drawn {
  readonly kind?: WalkKind;
  readonly precision?: number;
  readonly frames?: StepFrames;
  readonly exposure?: 1 | 2;
}

/**
 * A walk on the spot, left step first, on ones: stand at frame 1, then 13 16 19 22 25 … 37, marked in both
 * views. Its feet land heel first and stay where they land, its weight is over them, and its hips keep
 * the trade's order; in life's it is sound as well.
 */
export function walk(drawn: Drawn = {}): Walk {
  const { kind = "plain", precision = 0.005, exposure = 1 } = drawn;
  const frames = drawn.frames ?? { left: FRAMES, right: FRAMES };
  const steps = (["left", "right"] as const).flatMap((side, nth) =>
    POSES.map((pose) => {
      const from = FIRST + (nth === 0 ? 0 : frames.left);
      const frame = from + Math.round(AT[pose] * frames[side]);
      return stepPanel({ nth, side, pose, frame }, precision);
    }),
  );
  const last = FIRST + frames.left + frames.right;
  const end = stepPanel({ nth: 2, side: "left", pose: "contact", frame: last }, precision);
  return {
    kind,
    framesPerSecond: 24,
    exposure,
    travel: "on-the-spot",
    advance: ADVANCE,
    build: { headsTall: 7.5, legShare: 0.53, statureMetres: null },
    panels: [stand(precision), ...steps, { ...end, id: "end" }],
  };
}

interface Moment {
  readonly nth: number;
  readonly side: Side;
  readonly pose: StepPose;
  readonly frame: number;
}

function stepPanel({ nth, side, pose, frame }: Moment, precision: number): WalkPanel {
  const passed = (frame - FIRST) * ADVANCE; // the panel's middle, over the ground
  const body = (nth + AT[pose]) * STEP;
  const heel = { x: (nth + HEEL) * STEP, y: 0 }; // of the foot that carries
  const far: Side = side === "left" ? "right" : "left";
  const hip = { x: body, y: HIPS[pose] };
  const points: Points = new Map([
    ...upperBody(hip),
    ...leg(side, hip, standing(heel, pose === "contact" ? TOE_UP : 0)),
    ...leg(far, hip, farFoot(swinging(nth, AT[pose]), pose)),
  ]);
  const shift = SHIFT[pose] * (side === "right" ? 1 : -1);
  return {
    id: `${side} ${pose}`,
    frame,
    pose,
    weightOn: side,
    place: null,
    marks: { side: marked(points, passed, precision), front: fromAhead(points, shift, precision) },
  };
}

/** The other heel leaves a step behind and lands a step ahead, lifted in between. */
function swinging(nth: number, share: number): Spot {
  return { x: (nth - 1 + HEEL + 2 * share) * STEP, y: 0.12 * Math.sin(Math.PI * share) };
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

type Points = ReadonlyMap<JointName, readonly [number, number]>;

/** A foot's points, leg lengths. */
interface Foot {
  readonly heel: Spot;
  readonly ankle: Spot;
  readonly ball: Spot;
  readonly toe: Spot;
}

/** A foot on its heel, its toe so far up. */
function standing(heel: Spot, toeUp: number): Foot {
  return {
    heel,
    ankle: { x: heel.x + 0.05, y: heel.y + 0.08 },
    ball: { x: heel.x + 0.18, y: heel.y + 0.7 * toeUp },
    toe: { x: heel.x + 0.25, y: heel.y + toeUp },
  };
}

/** The foot that does not carry: at a contact its heel is up, or its leg would not reach; else it swings. */
function farFoot(heel: Spot, pose: StepPose): Foot {
  const { ball, toe, ...flat } = standing(heel, 0);
  if (pose !== "contact") return { ball, toe, ...flat };
  const up = (from: Spot): Spot => {
    const [x, y] = [from.x - ball.x, from.y - ball.y];
    return {
      x: ball.x + x * Math.cos(HEEL_UP) + y * Math.sin(HEEL_UP),
      y: ball.y - x * Math.sin(HEEL_UP) + y * Math.cos(HEEL_UP),
    };
  };
  return { ball, toe, heel: up(flat.heel), ankle: up(flat.ankle) };
}

function leg(
  side: Side,
  hip: Spot,
  { heel, ankle, ball, toe }: Foot,
): [JointName, readonly [number, number]][] {
  const knee = kneeBetween(hip, ankle);
  return [
    [`${side}-hip`, [hip.x, hip.y]],
    [`${side}-knee`, [knee.x, knee.y]],
    [`${side}-ankle`, [ankle.x, ankle.y]],
    [`${side}-heel`, [heel.x, heel.y]],
    [`${side}-ball`, [ball.x, ball.y]],
    [`${side}-toe`, [toe.x, toe.y]],
  ];
}

/** The knee ahead of the line from hip to ankle, both bones as long as on the stand. */
function kneeBetween(hip: Spot, ankle: Spot): Spot {
  const [x, y] = [ankle.x - hip.x, ankle.y - hip.y];
  const apart = Math.hypot(x, y);
  const aside = Math.sqrt(Math.max(0, BONE ** 2 - (apart / 2) ** 2)) / apart;
  return { x: hip.x + x / 2 - y * aside, y: hip.y + y / 2 + x * aside };
}

/** Trunk, head and hanging arms over the hips. */
function upperBody({ x, y }: Spot): [JointName, readonly [number, number]][] {
  return [
    ["head", [x + 0.03, y + 0.85]],
    ["neck", [x + 0.01, y + 0.66]],
    ...(["left", "right"] as const).flatMap((side): [JointName, readonly [number, number]][] => [
      [`${side}-shoulder`, [x, y + 0.6]],
      [`${side}-elbow`, [x, y + 0.27]],
      [`${side}-wrist`, [x + 0.03, y]],
    ]),
  ];
}

function stand(precision: number): WalkPanel {
  const points = new Map(upperBody({ x: 0, y: 1 }));
  for (const side of ["left", "right"] as const) {
    points.set(`${side}-hip`, [0, 1]).set(`${side}-knee`, [0, 0.54]);
    points.set(`${side}-ankle`, [0, 0.08]).set(`${side}-heel`, [-0.05, 0]);
    points.set(`${side}-ball`, [0.13, 0]).set(`${side}-toe`, [0.2, 0]);
  }
  return {
    id: "stand",
    frame: 1,
    pose: "stand",
    weightOn: null,
    place: null,
    marks: { side: marked(points, 0, precision), front: fromAhead(points, 0, precision) },
  };
}

function marked(points: Points, middle: number, precision: number): ViewMarks {
  const side: Partial<Record<JointName, Mark>> = {};
  for (const [joint, [x, y]] of points) {
    side[joint] = { x: 360 + (x - middle) * LEG, y: 1080 - y * LEG, precision: precision * LEG };
  }
  return side;
}

/** The same heights from ahead: feet on their tracks, the body shifted toward the one that carries. */
function fromAhead(points: Points, shift: number, precision: number): ViewMarks {
  const front: Partial<Record<JointName, Mark>> = {};
  for (const [joint, [, y]] of points) {
    const half = across(joint, shift);
    front[joint] = { x: 360 - half * LEG, y: 1080 - y * LEG, precision: precision * LEG };
  }
  return front;
}

/** Where a joint is across the walk, leg lengths to the walker's right. */
function across(joint: JointName, shift: number): number {
  const right = joint.startsWith("right") ? 1 : joint.startsWith("left") ? -1 : 0;
  if (/ankle|heel|ball|toe/.test(joint)) return right * HALF.feet;
  if (joint.endsWith("knee")) return (right * (HALF.feet + HALF.hips)) / 2 + shift / 2;
  return right * HALF.hips + shift;
}

/** The walk with one panel changed. */
export function withPanel(from: Walk, name: PanelName, change: Partial<WalkPanel>): Walk {
  if (!from.panels.some(({ id }) => id === name)) throw new Error(`no panel ${name}`);
  const panels = from.panels.map((panel) => (panel.id === name ? { ...panel, ...change } : panel));
  return { ...from, panels: panels.toSorted((a, b) => a.frame - b.frame) };
}

/** Both hips of a panel higher by so many leg lengths, in both views; below 0, lower. */
export function raise(from: Walk, name: PanelName, legs: number): Walk {
  return lift(from, name, ["left-hip", "right-hip"], legs);
}

/** Marks of one panel higher by so many leg lengths, in both views; below 0, lower. */
export function lift(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  legs: number,
): Walk {
  const bySide = moveMarks(from, name, "side", joints, { x: 0, y: legs });
  return moveMarks(bySide, name, "front", joints, { x: 0, y: legs });
}

/** Marks of one panel higher by so many leg lengths in the front view alone. */
export function liftAhead(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  legs: number,
): Walk {
  return moveMarks(from, name, "front", joints, { x: 0, y: legs });
}

/** Marks of one panel further ahead by so many leg lengths; below 0, back. */
export function push(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  legs: number,
): Walk {
  return moveMarks(from, name, "side", joints, { x: legs, y: 0 });
}

/** Marks of one panel further to the walker's right by so many leg lengths; below 0, to his left. */
export function shift(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  legs: number,
): Walk {
  return moveMarks(from, name, "front", joints, { x: -legs, y: 0 });
}

/** Left and right marks of a pose moved toward each other's place in one view: 1 is all the way. */
export function exchanged(
  from: Walk,
  name: PanelName,
  view: View,
  parts: readonly LimbJoint[],
  share: number,
): Walk {
  return changeMarks(from, name, view, (marks) => {
    const moved: Partial<Record<JointName, Mark>> = { ...marks };
    for (const part of parts) {
      const [left, right] = [marks[`left-${part}`], marks[`right-${part}`]];
      if (left === undefined || right === undefined) throw new Error(`no ${part} on ${name}`);
      const by = { x: share * (right.x - left.x), y: share * (right.y - left.y) };
      moved[`left-${part}`] = { ...left, x: left.x + by.x, y: left.y + by.y };
      moved[`right-${part}`] = { ...right, x: right.x - by.x, y: right.y - by.y };
    }
    return moved;
  });
}

/** A panel's stem moved to another frame; on the spot its drawing goes along with the ground. */
export function retime(from: Walk, name: PanelName, frame: number): Walk {
  const panel = from.panels.find(({ id }) => id === name);
  const passed = panel === undefined ? 0 : (frame - panel.frame) * from.advance;
  const gone = changeMarks(from, name, "side", (marks) => {
    const moved = Object.entries(marks).map(([j, mark]) => [
      j,
      { ...mark, x: mark.x - passed * LEG },
    ]);
    return Object.fromEntries(moved);
  });
  return withPanel(gone, name, { frame });
}

/** The walk with marks taken off one panel, in both views unless one is named. */
export function unmark(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  views: readonly View[] = VIEWS,
): Walk {
  const without = (marks: ViewMarks) =>
    Object.fromEntries(
      Object.entries(marks).filter(([joint]) => !joints.includes(joint as JointName)),
    );
  return views.reduce((rest, view) => changeMarks(rest, name, view, without), from);
}

/** Marks of one panel placed as exactly as a share of a leg, in both views. */
export function placedTo(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  share: number,
): Walk {
  const vague = (marks: ViewMarks) =>
    Object.fromEntries(
      Object.entries(marks).map(([joint, mark]) => [
        joint,
        joints.includes(joint as JointName) ? { ...mark, precision: share * LEG } : mark,
      ]),
    );
  return VIEWS.reduce((rest, view) => changeMarks(rest, name, view, vague), from);
}

/** The walk without one of its panels. */
export function without(from: Walk, name: PanelName): Walk {
  return { ...from, panels: from.panels.filter(({ id }) => id !== name) };
}

function moveMarks(
  from: Walk,
  name: PanelName,
  view: View,
  joints: readonly JointName[],
  by: Spot,
): Walk {
  return changeMarks(from, name, view, (marks) => {
    const moved: Partial<Record<JointName, Mark>> = { ...marks };
    for (const joint of joints) {
      const mark = marks[joint];
      if (mark === undefined) throw new Error(`no ${joint} on ${name}`);
      moved[joint] = { ...mark, x: mark.x + by.x * LEG, y: mark.y - by.y * LEG };
    }
    return moved;
  });
}

function changeMarks(
  from: Walk,
  name: PanelName,
  view: View,
  change: (marks: ViewMarks) => ViewMarks,
): Walk {
  const panel = from.panels.find(({ id }) => id === name);
  if (panel === undefined) throw new Error(`no panel ${name}`);
  const marks = { ...panel.marks, [view]: change(panel.marks[view]) };
  return withPanel(from, name, { marks });
}
