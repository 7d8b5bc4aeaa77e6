import { type JointName, limbJoint, SIDES, type Side, type SidePoint } from "../../body";
import { bodyChain, type Hanging } from "./body-chain";
import { staysBetween } from "./foot-nodes";
import { type FootTrack, footTrack } from "./foot-track";
import { monotoneSlope, parabolaSlope } from "./hermite";
import { type LegBetween, legBetween } from "./leg-between";
import type { SideFigure } from "./motion-key";
import { curveBetween, type Neighbours } from "./neighbours";
import { onceAsked } from "./once-asked";

type Points = Map<JointName, SidePoint>;
type Path = (at: number) => SidePoint;

/** The side view from one pose to the next. */
export interface SideBetween {
  /** Hips, knees and feet. */
  legs(moment: number): SideFigure;
  /** Hips, and the knee and foot of one side. */
  leg(side: Side, moment: number): SideFigure;
  at(moment: number): SideFigure;
}

/**
 * The figure between two poses, from the side: feet first, then the hips, which come down where a leg that
 * stands would not reach; then knees, and what the hips carry.
 *
 * Units:   leg lengths
 */
export function sideBetween(around: Neighbours): SideBetween {
  const feet = SIDES.map((side) => footedLeg(around, side));
  const hips = SIDES.map((side) => ({ side, path: pathOf(around, limbJoint(side, "hip")) }));
  let chain: readonly Hanging[] | null = null;
  const legPoints = (moment: number, asked: readonly FootedLeg[]): Points => {
    const points: Points = new Map();
    placeHips(points, hips, moment);
    lower(points, feet, moment);
    for (const one of asked) placeLeg(points, one, moment);
    for (const { side, looseKnee } of asked) {
      const path = looseKnee();
      if (path !== null) points.set(limbJoint(side, "knee"), path(moment));
    }
    return points;
  };
  const ofSide = (side: Side) => feet.filter((one) => one.side === side);
  return {
    legs: (moment) => Object.fromEntries(legPoints(moment, feet)),
    leg: (side, moment) => Object.fromEntries(legPoints(moment, ofSide(side))),
    at(moment) {
      const points = legPoints(moment, feet);
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

/** A leg and its foot between two poses, each worked out when it is first asked for. */
interface FootedLeg {
  readonly side: Side;
  /** Whether the foot stands on one footprint all the time. */
  readonly stays: boolean;
  track(): FootTrack | null;
  leg(): LegBetween | null;
  /** Where the knee goes by itself, where there is no whole leg. */
  looseKnee(): Path | null;
}

function footedLeg(around: Neighbours, side: Side): FootedLeg {
  const leg = onceAsked(() => legBetween(around, side));
  const loose = onceAsked(() => pathOf(around, limbJoint(side, "knee")));
  return {
    side,
    stays: staysBetween(around.from, around.to, side),
    track: onceAsked(() => footTrack(around, side)),
    leg,
    looseKnee: () => (leg() === null ? loose() : null),
  };
}

/**
 * Brings the hips down as far as a leg asks that would have to be longer than it is drawn, and whose foot
 * stays. One that is about to leave peels off instead.
 */
function lower(points: Points, feet: readonly FootedLeg[], moment: number): void {
  const short = feet.map(({ side, stays, track, leg }) => {
    const hip = points.get(limbJoint(side, "hip"));
    const [own, foot] = stays ? [leg(), track()] : [null, null];
    if (hip === undefined || own === null || foot === null) return 0;
    return own.short(hip, foot.at(moment), moment);
  });
  const by = Math.max(...short);
  if (by === 0) return;
  for (const side of SIDES) {
    const hip = points.get(limbJoint(side, "hip"));
    if (hip !== undefined) points.set(limbJoint(side, "hip"), { x: hip.x, y: hip.y - by });
  }
}

function placeLeg(points: Points, { side, ...asked }: FootedLeg, moment: number): void {
  const [track, leg] = [asked.track(), asked.leg()];
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
