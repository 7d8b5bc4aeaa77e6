import type { Side, SidePoint } from "../../body";
import { gathered } from "../../gathered";
import { legAngles } from "../leg-angles";
import {
  type FootFrame,
  type FootPoints,
  footFrame,
  footShape,
  pointOf,
  shapeBetween,
} from "./foot-shape";
import { mix, mixedPoint } from "./mix";
import type { MotionKey, Planted } from "./motion-key";
import { type Footprint, footprintOf, rolledFoot } from "./rolling";

/**
 * When a foot lies flat after it landed, and when its heel rises, as shares of the time it is planted.
 * Source: Perry's phases: loading response ends at 12 % of the stride, terminal stance begins at 31 %, and
 * the toe leaves at 62 %
 */
const FLAT_SHARE = 12 / 62;
const RISE_SHARE = 31 / 62;
/** The toe's leaving as a share of the stride: same source. */
const LEAVES_SHARE = 0.62;

/** From this share of its time a foot that peels has its heel up; a foot that has half as much, peels. */
const SURELY_UP = 0.66;
const HALF_UP = 0.5;

/** A foot at a moment. The carrier's place is in leg lengths, the pitch in radians. */
export interface FootNode {
  readonly at: number;
  readonly pitch: number;
  readonly carrier: SidePoint;
  /** Whether it is put down then, so that its way through the air ends without speed. */
  readonly lands: boolean;
  /** Whether it stands on the ground until then. */
  readonly stood: boolean;
}

/** A foot from one pose to the next. */
export interface FootSpan {
  readonly frame: FootFrame;
  readonly shapes: readonly [FootPoints, FootPoints];
  readonly prints: readonly [Footprint, Footprint];
  /** Whether it stands on one footprint all the time. */
  readonly stays: boolean;
  /** The moments until which it stands where it was, and from which it stands in the next place. */
  readonly leaves: number;
  readonly lands: number;
  /** Both poses' and, between them, the moments at which it rolls flat, lifts its heel, leaves, or lands. */
  readonly nodes: readonly FootNode[];
}

type BothFeet = Readonly<Record<Side, FootSpan | null>>;

/** What was worked out between two poses, for as long as somebody holds the first: three spans ask for it. */
const known = new WeakMap<MotionKey, { readonly to: MotionKey; readonly feet: BothFeet }>();

/** Null where the two poses have no part of the foot in common. */
export function footSpan(from: MotionKey, to: MotionKey, side: Side): FootSpan | null {
  const before = known.get(from);
  if (before?.to === to) return before.feet[side];
  const feet = { left: spanOf(from, to, "left"), right: spanOf(from, to, "right") };
  known.set(from, { to, feet });
  return feet[side];
}

function spanOf(from: MotionKey, to: MotionKey, side: Side): FootSpan | null {
  const frame = footFrame(from, to, side);
  if (frame === null) return null;
  const [a, b] = [footShape(from, side, frame), footShape(to, side, frame)];
  const printA = a === null ? null : footprintOf(pointsOf(from, side, frame), a.local);
  const printB = b === null ? null : footprintOf(pointsOf(to, side, frame), b.local);
  if (a === null || b === null || printA === null || printB === null) return null;
  const [stood, stands] = [from.planted[side], to.planted[side]];
  const stays = staysBetween(from, to, side);
  const leaves = stays ? to.frame : leavesAt(from, to, stood);
  const lands = stays ? from.until : landsAt(to, stands, leaves);
  const pitch = [a.pitch, a.pitch + shortTurn(b.pitch - a.pitch)] as const;
  const turns =
    stays && stood !== null
      ? flatTurns(stood, from, to, { pitch, frame })
      : airTurns(from, to, { stood, leaves, lands, pitch });
  const inner = gathered(turns, (turn): FootNode[] => {
    const share = (turn.at - from.until) / (to.frame - from.until);
    const local = shapeBetween(a.local, b.local, share);
    const foot = rolledFoot(local, turn.pitch, mixedPoint(printA, printB, turn.print));
    const carrier = foot[frame.carrier];
    const isLanding = turn.at === lands;
    return carrier === undefined ? [] : [{ ...turn, carrier, lands: isLanding, stood: stays }];
  });
  const nodes = [
    nodeOf(from, side, frame, {
      at: from.until,
      pitch: pitch[0],
      lands: false,
      stood: stoodAt(from, side),
    }),
    ...inner,
    nodeOf(to, side, frame, {
      at: to.frame,
      pitch: pitch[1],
      lands: stands !== null && !stays && lands === to.frame,
      stood: stoodAt(to, side),
    }),
  ];
  const prints = [printA, printB] as const;
  return { frame, shapes: [a.local, b.local], prints, stays, leaves, lands, nodes };
}

/** Whether a foot stands on the ground until a pose, and does not only come down there. */
function stoodAt({ frame, planted }: MotionKey, side: Side): boolean {
  const now = planted[side];
  return now !== null && now.from < frame;
}

/** Whether two poses have a foot on one footprint. */
export function staysBetween(from: MotionKey, to: MotionKey, side: Side): boolean {
  const [stood, stands] = [from.planted[side], to.planted[side]];
  return stood !== null && stands !== null && stood.from === stands.from;
}

/** A pitch at a moment between two poses, and how far from the one footprint to the other it is then. */
interface Turn {
  readonly at: number;
  readonly pitch: number;
  readonly print: number;
}

function pointsOf(key: MotionKey, side: Side, { parts }: FootFrame): FootPoints {
  const points: FootPoints = {};
  for (const part of parts) {
    const point = pointOf(key, side, part);
    if (point !== null) points[part] = point;
  }
  return points;
}

function nodeOf(
  key: MotionKey,
  side: Side,
  { carrier }: FootFrame,
  node: Omit<FootNode, "carrier">,
): FootNode {
  return { ...node, carrier: pointOf(key, side, carrier) ?? { x: 0, y: 0 } };
}

function leavesAt(from: MotionKey, to: MotionKey, stood: Planted | null): number {
  if (stood === null || stood.to <= from.until) return from.until;
  return stood.to < to.frame ? stood.to : mix(from.until, to.frame, 0.5);
}

function landsAt(to: MotionKey, stands: Planted | null, leaves: number): number {
  if (stands === null) return to.frame;
  return Math.min(to.frame, Math.max(leaves, stands.from));
}

/** Where it rolls flat and where its heel rises, as far as that lies between the poses. */
function flatTurns(
  { from, to }: Planted,
  before: MotionKey,
  after: MotionKey,
  { pitch, frame }: { readonly pitch: readonly [number, number]; readonly frame: FootFrame },
): Turn[] {
  if (frame.line?.[0] !== "heel") return []; // by its other lines a foot does not say when it is flat
  const flat = Math.min(Math.max(...pitch), Math.max(Math.min(...pitch), 0));
  return [FLAT_SHARE, RISE_SHARE]
    .map((share) => mix(from, to, share))
    .filter((at) => at > before.until && at < after.frame)
    .map((at) => ({
      at,
      pitch: flat,
      print: (at - before.until) / (after.frame - before.until),
    }));
}

interface Air {
  readonly stood: Planted | null;
  readonly leaves: number;
  readonly lands: number;
  readonly pitch: readonly [number, number];
}

function airTurns(from: MotionKey, to: MotionKey, { stood, leaves, lands, pitch }: Air): Turn[] {
  const turns: Turn[] = [];
  if (stood !== null && leaves > from.until && leaves < lands) {
    const evenly = mix(...pitch, (leaves - from.until) / (to.frame - from.until));
    const peeled = pitch[0] + peel(stood, from.until, pitch[0]);
    const room = (lands - leaves) / (stood.to - stood.from);
    turns.push({ at: leaves, pitch: mix(evenly, peeled, Math.min(1, room / ROOM)), print: 0 });
  }
  if (lands > leaves && lands < to.frame) turns.push({ at: lands, pitch: pitch[1], print: 1 });
  return turns;
}

/**
 * A foot has peeled whole as it leaves where this share of the time that it was planted is left until the next pose;
 * with less it has no time to turn back, and the pose itself tells how it leaves. By the trade a rear foot is up at
 * the down, so it leaves a frame or two before.
 * Source: our own choice; in life the way from its leaving to the passing takes 0.29 of that time (0.24 to 0.60 of
 * a step)
 */
const ROOM = 0.2;

/**
 * By how much a foot turns until its toe leaves, as far as it has begun to: a foot that is drawn flat when
 * others have their heels up leaves flat.
 * Source: published angles of thigh, knee and ankle (`legAngles`)
 */
function peel({ from, to }: Planted, at: number, pitch: number): number {
  const share = Math.min(1, Math.max(0, (at - from) / (to - from)));
  const usual = publishedPitch(LEAVES_SHARE * share);
  const begun = share < SURELY_UP ? 1 : Math.min(1, Math.max(0, pitch / (HALF_UP * usual)));
  return begun * (publishedPitch(LEAVES_SHARE) - usual);
}

function publishedPitch(shareOfStride: number): number {
  const { thigh, knee, ankle } = legAngles(shareOfStride);
  return thigh - knee + ankle;
}

/** The short way round. Radians. */
function shortTurn(angle: number): number {
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}
