import { bendOf, limbJoint, middleJoint, type Side, type SidePoint } from "../../body";
import type { FootPoints } from "./foot-shape";
import type { FootTrack } from "./foot-track";
import { meanSlope } from "./hermite";
import { mix } from "./mix";
import type { MotionKey } from "./motion-key";
import { curveBetween, type Neighbours } from "./neighbours";

/** A leg at a moment: its knee, and its foot brought to where the leg reaches. */
export interface PlacedLeg {
  readonly knee: SidePoint;
  readonly foot: FootPoints;
}

/** A leg from one pose to the next. */
export interface LegBetween {
  /** How far the hip has to come down for the leg to reach a foot that stands. Leg lengths. */
  short(hip: SidePoint, foot: FootPoints, moment: number): number;
  /** Null where the foot is not known. */
  at(moment: number, hip: SidePoint, track: FootTrack): PlacedLeg | null;
}

/** A foot that stands is turned at most so far beyond its own roll to suit the leg. Radians. */
const TURNS_WITHIN = (20 * Math.PI) / 180;
/** One that is about to leave, or has just landed, as far as a foot peels off. Radians. */
const PEELS_WITHIN = (60 * Math.PI) / 180;
/** A knee that points the way the walker goes, y down. */
const FORWARD = -1;

/**
 * The leg between two poses: the thigh turns smoothly, and the foot follows the knee. A foot in the air is
 * drawn to the shank's length; one that rolls over its heel or toe is rolled to it; where one lies flat the
 * knee is solved between hip and ankle. Thigh and shank go evenly from the lengths of one pose to those of
 * the other, and the knee stays on its drawn side.
 *
 * Errors:  null where a pose lacks the hip, the knee or the foot
 */
export function legBetween(around: Neighbours, side: Side): LegBetween | null {
  const { from, to } = around;
  const end = (["ankle", "heel"] as const).find(
    (one) => drawnLeg(from, side, one) !== null && drawnLeg(to, side, one) !== null,
  );
  if (end === undefined) return null;
  const [a, b] = [drawnLeg(from, side, end), drawnLeg(to, side, end)];
  const thigh = thighBetween(around, side);
  if (a === null || b === null || thigh === null) return null;
  const bonesAt = (moment: number) => {
    const share = (moment - from.until) / (to.frame - from.until);
    const bend = share < 0.5 ? (a.bend ?? b.bend) : (b.bend ?? a.bend);
    return {
      upper: mix(a.upper, b.upper, share),
      lower: mix(a.lower, b.lower, share),
      bend: bend ?? FORWARD,
    } as const;
  };
  return {
    short(hip, foot, moment) {
      const { upper, lower } = bonesAt(moment);
      const low = foot[end];
      if (low === undefined) return 0;
      const rest = (upper + lower) ** 2 - (hip.x - low.x) ** 2;
      return rest > 0 ? Math.max(0, hip.y - low.y - Math.sqrt(rest)) : 0;
    },
    at(moment, hip, track) {
      const bones = bonesAt(moment);
      const lean = thigh(moment);
      const knee = {
        x: hip.x + bones.upper * Math.sin(lean),
        y: hip.y - bones.upper * Math.cos(lean),
      };
      const foot = track.stands(moment)
        ? rolledTo(track, moment, end, knee, bones.lower)
        : drawnTo(track.at(moment), end, knee, bones.lower);
      const low = foot[end];
      if (low === undefined) return null;
      const bend = bendOf(flipped(hip), flipped(knee), flipped(low));
      const fits = Math.abs(away(knee, low) - bones.lower) < 1e-9;
      if (fits && (bend === null || bend === bones.bend)) return { knee, foot };
      return solved(hip, foot, end, bones);
    },
  };
}

type Bones = { readonly upper: number; readonly lower: number; readonly bend: 1 | -1 };

/** The foot brought within reach and the knee solved between it and the hip. */
function solved(hip: SidePoint, foot: FootPoints, end: "ankle" | "heel", bones: Bones) {
  const low = foot[end] ?? hip;
  const apart = away(hip, low);
  const [least, most] = [Math.abs(bones.upper - bones.lower), bones.upper + bones.lower];
  const may = Math.min(most, Math.max(least, apart));
  const by = apart > 0 ? may / apart - 1 : 0;
  const way = { x: (low.x - hip.x) * by, y: (low.y - hip.y) * by };
  const within = may === apart ? foot : moved(foot, way);
  const reached = within[end] ?? hip;
  const knee = middleJoint(flipped(hip), flipped(reached), bones);
  if (knee !== null) return { knee: flipped(knee), foot: within };
  // Folded flat: the knee is as far behind the hip as the foot, or straight under it.
  const down = { x: hip.x, y: hip.y - bones.upper };
  return { knee: down, foot: moved(foot, { x: down.x - low.x, y: down.y + bones.lower - low.y }) };
}

/** A foot in the air, as far from the knee as the shank is long. */
function drawnTo(
  foot: FootPoints,
  end: "ankle" | "heel",
  knee: SidePoint,
  lower: number,
): FootPoints {
  const low = foot[end];
  if (low === undefined) return foot;
  const apart = away(knee, low);
  if (apart === 0) return moved(foot, { x: 0, y: -lower });
  const by = lower / apart - 1;
  return moved(foot, { x: (low.x - knee.x) * by, y: (low.y - knee.y) * by });
}

const ROUNDS = 6; // of the secant method
const FIRST_TURN = 1e-3; // radians
const EXACT = 1e-12; // leg lengths

/** A foot that stands, rolled over its sole until its ankle is as far from the knee as the shank is long. */
function rolledTo(
  track: FootTrack,
  moment: number,
  end: "ankle" | "heel",
  knee: SidePoint,
  lower: number,
): FootPoints {
  const most = track.stays
    ? Math.min(TURNS_WITHIN, Math.abs(track.pitch(moment)) / 2)
    : PEELS_WITHIN;
  const off = (turn: number) => {
    const low = track.at(moment, turn)[end];
    return low === undefined ? 0 : away(knee, low) - lower;
  };
  let [was, now] = [0, Math.min(most, FIRST_TURN)];
  let [offWas, offNow] = [off(was), off(now)];
  if (most === 0) return track.at(moment);
  for (let round = 0; round < ROUNDS && Math.abs(offNow) > EXACT; round += 1) {
    const slope = (offNow - offWas) / (now - was);
    const next = Math.min(most, Math.max(-most, now - offNow / slope));
    if (!Number.isFinite(next) || next === now) break;
    [was, offWas] = [now, offNow];
    now = next;
    offNow = off(now);
  }
  return track.at(moment, Math.abs(offNow) <= Math.abs(off(0)) ? now : 0);
}

/** The thigh's lean from hanging straight down, knee ahead positive; counted on from pose to pose. Radians. */
function thighBetween(around: Neighbours, side: Side) {
  const leanOf = (key: MotionKey): number | null => {
    const hip = key.side[limbJoint(side, "hip")];
    const knee = key.side[limbJoint(side, "knee")];
    return hip === undefined || knee === undefined
      ? null
      : Math.atan2(knee.x - hip.x, hip.y - knee.y);
  };
  const first = leanOf(around.from) ?? 0;
  const near = (key: MotionKey, lean: number) => {
    const own = leanOf(key);
    return own === null ? null : lean + Math.atan2(Math.sin(own - lean), Math.cos(own - lean));
  };
  const last = near(around.to, first) ?? first;
  return curveBetween(
    around,
    (key) =>
      near(
        key,
        key === around.from || key === around.before ? first : key === around.to ? first : last,
      ),
    { slopeOf: meanSlope, steady: true },
  );
}

function drawnLeg(key: MotionKey, side: Side, end: "ankle" | "heel") {
  const hip = key.side[limbJoint(side, "hip")];
  const knee = key.side[limbJoint(side, "knee")];
  const foot = key.side[limbJoint(side, end)];
  if (hip === undefined || knee === undefined || foot === undefined) return null;
  const [upper, lower] = [away(hip, knee), away(knee, foot)];
  if (!(upper > 0 && lower > 0)) return null;
  return { upper, lower, bend: bendOf(flipped(hip), flipped(knee), flipped(foot)) };
}

function away(one: SidePoint, other: SidePoint): number {
  return Math.hypot(other.x - one.x, other.y - one.y);
}

function moved(foot: FootPoints, by: SidePoint): FootPoints {
  const points: FootPoints = {};
  for (const [part, point] of Object.entries(foot) as [keyof FootPoints, SidePoint][]) {
    points[part] = { x: point.x + by.x, y: point.y + by.y };
  }
  return points;
}

/** Two-bone limbs are solved with y down, as they are drawn. */
function flipped({ x, y }: SidePoint): SidePoint {
  return { x, y: -y };
}
