import type { JointName, Mark, Side, ViewMarks } from "../../lib/body";
import type { WalkPanel } from "../../lib/gait";
import type { StepPose } from "../../lib/motion";

/** The built walk's figure: panel units a leg. */
export const LEG = 420;
/** Leg lengths a step. */
const STEP = 0.72;
/** Frame of the first contact; the stand is held before it. */
export const FIRST = 13;
/** Leg lengths a frame, of twelve a step. */
export const ADVANCE = STEP / 12;

/** Hip heights of a walk that the trade calls sound, leg lengths. */
const HIPS: Readonly<Record<StepPose, number>> = {
  contact: 0.93,
  down: 0.91,
  passing: 0.95,
  up: 0.96,
};
/** When each pose comes, as a share of the step. */
export const AT: Readonly<Record<StepPose, number>> = {
  contact: 0,
  down: 0.25,
  passing: 0.5,
  up: 0.75,
};

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

/** Which pose of which step, and when. */
interface Moment {
  readonly nth: number;
  readonly side: Side;
  readonly pose: StepPose;
  readonly frame: number;
}

/** A pose of a step, marked in both views. */
export function stepPanel({ nth, side, pose, frame }: Moment, precision: number): WalkPanel {
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

export interface Spot {
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

/** The figure as it stands before its first step. */
export function stand(precision: number): WalkPanel {
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
