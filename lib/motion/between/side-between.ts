import { type JointName, limbJoint, SIDES, type Side, type SidePoint } from "../../body";
import { bodyChain, type Hanging } from "./body-chain";
import { type FootTrack, footTrack } from "./foot-track";
import { monotoneSlope, parabolaSlope } from "./hermite";
import { type LegBetween, legBetween } from "./leg-between";
import type { SideFigure } from "./motion-key";
import { curveBetween, type Neighbours } from "./neighbours";

type Points = Map<JointName, SidePoint>;
type Path = (at: number) => SidePoint;

/** The side view from one pose to the next. */
export interface SideBetween {
  /** Hips, knees and feet. */
  legs(moment: number): SideFigure;
  at(moment: number): SideFigure;
}

/**
 * The figure between two poses, from the side: feet first, then the hips, which come down where a leg that
 * stands would not reach; then knees, and what the hips carry.
 *
 * Units:   leg lengths
 */
export function sideBetween(around: Neighbours): SideBetween {
  const feet = SIDES.map((side) => ({ side, track: footTrack(around, side) }));
  const legs = new Map(SIDES.map((side) => [side, legBetween(around, side)]));
  const hips = SIDES.map((side) => ({ side, path: pathOf(around, limbJoint(side, "hip")) }));
  const loose = SIDES.filter((side) => legs.get(side) === null).map((side) => {
    const joint = limbJoint(side, "knee");
    return { joint, path: pathOf(around, joint) };
  });
  let chain: readonly Hanging[] | null = null;
  const legPoints = (moment: number): Points => {
    const points: Points = new Map();
    placeHips(points, hips, moment);
    lower(points, feet, legs, moment);
    for (const { side, track } of feet)
      placeLeg(points, { side, track, leg: legs.get(side) ?? null }, moment);
    for (const { joint, path } of loose) if (path !== null) points.set(joint, path(moment));
    return points;
  };
  return {
    legs: (moment) => Object.fromEntries(legPoints(moment)),
    at(moment) {
      const points = legPoints(moment);
      chain ??= bodyChain(around);
      hang(points, chain, moment);
      return Object.fromEntries(points);
    },
  };
}

/** Where a joint goes by itself: ahead by a spline through the poses, in height without passing beyond them. */
function pathOf(around: Neighbours, joint: JointName): Path | null {
  const x = curveBetween(around, ({ side }) => side[joint]?.x ?? null, { slopeOf: parabolaSlope });
  const y = curveBetween(around, ({ side }) => side[joint]?.y ?? null, { slopeOf: monotoneSlope });
  return x === null || y === null ? null : (at) => ({ x: x(at), y: y(at) });
}

function placeHips(
  points: Points,
  hips: readonly { readonly side: Side; readonly path: Path | null }[],
  moment: number,
): void {
  for (const { side, path } of hips)
    if (path !== null) points.set(limbJoint(side, "hip"), path(moment));
}

interface Footed {
  readonly side: Side;
  readonly track: FootTrack | null;
}

/**
 * Brings the hips down as far as a leg asks that would have to be longer than it is drawn, and whose foot
 * stays. One that is about to leave peels off instead.
 */
function lower(
  points: Points,
  feet: readonly Footed[],
  legs: ReadonlyMap<Side, LegBetween | null>,
  moment: number,
): void {
  const short = feet.map(({ side, track }) => {
    const hip = points.get(limbJoint(side, "hip"));
    const leg = legs.get(side) ?? null;
    if (hip === undefined || leg === null || track === null || !track.stays) return 0;
    return leg.short(hip, track.at(moment), moment);
  });
  const by = Math.max(...short);
  if (by === 0) return;
  for (const side of SIDES) {
    const hip = points.get(limbJoint(side, "hip"));
    if (hip !== undefined) points.set(limbJoint(side, "hip"), { x: hip.x, y: hip.y - by });
  }
}

interface Leg extends Footed {
  readonly leg: LegBetween | null;
}

function placeLeg(points: Points, { side, track, leg }: Leg, moment: number): void {
  if (track === null) return;
  const hip = points.get(limbJoint(side, "hip"));
  const placed = hip === undefined || leg === null ? null : leg.at(moment, hip, track);
  const foot = placed?.foot ?? track.at(moment);
  for (const part of track.parts) {
    const point = foot[part];
    if (point !== undefined) points.set(limbJoint(side, part), point);
  }
  if (placed !== null) points.set(limbJoint(side, "knee"), placed.knee);
}

function hang(points: Points, chain: readonly Hanging[], moment: number): void {
  for (const { joint, at } of chain) {
    const point = at(moment, points);
    if (point !== null) points.set(joint, point);
  }
}
