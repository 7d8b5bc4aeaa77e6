import { type FigureSize, middleJoint } from "../../body";
import type { Point } from "../../geometry";
import { bodySwing, type LegAngles, legAngles } from "../../motion";
import { REAR_LEAVES } from "../rear-leaves";
import { hipsLowered } from "./hips-lowered";
import { type FootRoll, type FootSpots, liftedFoot, plantedFoot, rollOf } from "./planted-foot";

/** Which moment of a step a figure is in, and what of the published walk it is to change. */
export interface Moment {
  /** Of the step, from the contact of the foot that carries. */
  readonly share: number;
  /** Leg lengths from one footprint to the next; null leaves the published angles as they are. */
  readonly stepLength: number | null;
  /** The hips' height over the published figure's at another share, leg lengths; null leaves it. */
  readonly hips: { readonly over: number; readonly by: number } | null;
}

/** Hips and legs from the side. Leg lengths, y up; x 0 is the heel of the carrying foot's print. */
export interface PosedLegs {
  /** The middle between the hips. */
  readonly middle: Point;
  readonly carrying: PosedLeg;
  readonly other: PosedLeg;
}
export interface PosedLeg extends FootSpots {
  readonly hip: Point;
  readonly knee: Point;
}

/** How far the lowest point of the swinging foot is above the ground, leg lengths: 3.4 ± 1.2 % at passing. */
const CLEARANCE = 0.034; // 317 captured steps by 15 people
const CLEAR_FROM = 0.6; // share of the step; before it the foot is still rising from the ground

/** A chord longer than this share of the leg's reach would stand too flat to be a leg: our own choice. */
const MOST_REACH = 0.9;

/** The published angles' hips, legs and feet at a moment of a step, put on the ground. */
export function posedLegs(size: FigureSize, moment: Moment): PosedLegs {
  const stretch = stretchOf(size, moment.stepLength);
  const plain = onGround(size, moment.share, stretch);
  const { over, by } = moment.hips ?? { over: moment.share, by: 0 };
  const heightAt = (share: number) => onGround(size, share, stretch).middle.y;
  // Nothing is stretched where no step length is asked for, and so nothing is to be lowered.
  const lower =
    moment.stepLength === null ? 0 : hipsLowered(over, heightAt(MIDDLE) - heightAt(CONTACT));
  return withLegs(size, plain, { x: plain.middle.x, y: heightAt(over) - lower + by }, moment);
}

/** Shares of a step between which the hips rise. */
const [CONTACT, MIDDLE] = [0, 0.5];

/** The carrying leg on its foot, and where the other ankle is from there. */
interface OnGround {
  readonly middle: Point;
  readonly roll: FootRoll;
  readonly otherAnkle: Point;
  readonly otherPitch: number;
  /** Hip to ankle with the knees as bent as published: the carrying leg, and the other. */
  readonly lengths: { readonly carrying: number; readonly other: number };
  /** The footprint of the other foot behind, while it stands. */
  readonly behind: number;
}

function onGround(size: FigureSize, share: number, stretch: number): OnGround {
  const carries = legAngles(share / 2);
  const swings = legAngles(0.5 + share / 2);
  const { hip } = bodySwing(share);
  const own = chord(size, carries, stretch);
  const roll = rollOf(pitchOf(carries));
  const { ankle } = plantedFoot(size.foot, roll);
  const middle = { x: ankle.x - own.x - hip.ahead, y: ankle.y - own.y - hip.up };
  const far = chord(size, swings, stretch);
  const otherAnkle = { x: middle.x - hip.ahead + far.x, y: middle.y - hip.up + far.y };
  const otherPitch = pitchOf(swings);
  const rear = plantedFoot(size.foot, rollOf(otherPitch));
  const lengths = { carrying: Math.hypot(own.x, own.y), other: Math.hypot(far.x, far.y) };
  return { middle, roll, otherAnkle, otherPitch, lengths, behind: otherAnkle.x - rear.ankle.x };
}

/** Where the ankle is from the hip; a longer step lays the leg flatter, its knee as bent as before. */
function chord({ thigh, shank }: FigureSize, { thigh: lean, knee }: LegAngles, stretch: number) {
  const x = thigh * Math.sin(lean) + shank * Math.sin(lean - knee);
  const y = -thigh * Math.cos(lean) - shank * Math.cos(lean - knee);
  const length = Math.hypot(x, y);
  const reach = Math.max(-MOST_REACH, Math.min(MOST_REACH, (stretch * x) / length));
  return { x: reach * length, y: -Math.sqrt(1 - reach * reach) * length };
}

function pitchOf({ thigh, knee, ankle }: LegAngles): number {
  return thigh - knee + ankle;
}

/** By how much the ankles' distance from the hips is stretched for a step of this length. */
function stretchOf(size: FigureSize, stepLength: number | null): number {
  if (stepLength === null) return 1;
  const plain = -onGround(size, 0, 1).behind;
  const wide = -onGround(size, 0, 1.1).behind;
  // The feet's part of a step does not stretch, the legs' part does in proportion.
  return Math.max(0, 1 + (0.1 * (stepLength - plain)) / (wide - plain));
}

/** The hips as high as they are to be, the feet where they are, the knees solved. */
function withLegs(
  size: FigureSize,
  { roll, otherAnkle, otherPitch, lengths, behind }: OnGround,
  middle: Point,
  { share, stepLength }: Moment,
): PosedLegs {
  const { hip } = bodySwing(share);
  const carryingHip = { x: middle.x + hip.ahead, y: middle.y + hip.up };
  const otherHip = { x: middle.x - hip.ahead, y: middle.y - hip.up };
  const stands = share < REAR_LEAVES.at;
  const print = stepLength === null ? behind : -stepLength;
  const carrying = reached(size.foot, carryingHip, { roll, length: lengths.carrying });
  const foot = stands
    ? reached(size.foot, otherHip, { roll: rollOf(otherPitch), length: lengths.other, print })
    : cleared(liftedFoot(size.foot, otherAnkle, otherPitch), share);
  return {
    middle,
    carrying: { ...carrying, hip: carryingHip, knee: kneeOf(size, carryingHip, carrying.ankle) },
    other: { ...foot, hip: otherHip, knee: kneeOf(size, otherHip, foot.ankle) },
  };
}

const HEEL_STEP = Math.PI / 360; // half a degree
const TINY = 1e-9; // leg lengths: what rounding may leave
const HEEL_MOST = Math.PI / 3; // beyond it a foot stands on its toes: our own choice

interface Reaching {
  readonly roll: FootRoll;
  /** Hip to ankle. */
  readonly length: number;
  /** Where the flat heel was put down. */
  readonly print?: number;
}

/** A foot on the ground whose heel comes up as far as it must for its leg to be no longer than this. */
function reached(
  foot: FigureSize["foot"],
  hip: Point,
  { roll, length, print = 0 }: Reaching,
): FootSpots {
  const at = (one: FootRoll) => moved(plantedFoot(foot, one), { x: print, y: 0 });
  let spots = at(roll);
  if (roll.on === "heel") return spots;
  const tooFar = () => Math.hypot(spots.ankle.x - hip.x, spots.ankle.y - hip.y) > length + TINY;
  for (let pitch = roll.pitch; tooFar() && pitch > -HEEL_MOST; pitch -= HEEL_STEP) {
    spots = at({ pitch, on: "ball" });
  }
  return spots;
}

function moved(foot: FootSpots, by: Point): FootSpots {
  const at = ({ x, y }: Point) => ({ x: x + by.x, y: y + by.y });
  return { ankle: at(foot.ankle), heel: at(foot.heel), ball: at(foot.ball), toe: at(foot.toe) };
}

/** A swinging foot raised as far as it must be to clear the ground. */
function cleared(foot: FootSpots, share: number): FootSpots {
  const clearance =
    CLEARANCE * Math.min(1, (share - REAR_LEAVES.at) / (CLEAR_FROM - REAR_LEAVES.at));
  const by = Math.max(0, clearance - Math.min(foot.heel.y, foot.ball.y, foot.toe.y));
  return moved(foot, { x: 0, y: by });
}

/** The knee ahead of the line from hip to ankle; on it where the leg does not reach. */
function kneeOf({ thigh, shank }: FigureSize, hip: Point, ankle: Point): Point {
  const knee = middleJoint(hip, ankle, { upper: thigh, lower: shank, bend: 1 }); // y up: ahead
  if (knee !== null) return knee;
  const share = thigh / (thigh + shank);
  return { x: hip.x + share * (ankle.x - hip.x), y: hip.y + share * (ankle.y - hip.y) };
}
