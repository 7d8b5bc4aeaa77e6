import { type FrontPoint, JOINTS, type JointName, SIDES, type Side } from "../../body";
import { gathered } from "../../gathered";
import { hermite, monotoneSlope, parabolaSlope } from "./hermite";
import { mix } from "./mix";
import type { FrontFigure, MotionKey, SideFigure } from "./motion-key";
import { curveBetween, type Neighbours, type ValueOf } from "./neighbours";

const FEET = new Map(
  SIDES.flatMap((side) =>
    (["ankle", "heel", "ball", "toe"] as const).map((part): [JointName, Side] => [
      `${side}-${part}`,
      side,
    ]),
  ),
);

/**
 * The front view from one pose to the next: across the walk by a spline, a foot that stands where it stands;
 * in height as the side view has it, where that has the joint.
 *
 * Units:   leg lengths
 */
export function frontBetween(around: Neighbours) {
  const { from, to } = around;
  const paths = gathered(JOINTS, (joint) => {
    const foot = FEET.get(joint);
    const z = foot === undefined ? across(around, joint) : footAcross(around, joint, foot);
    const y = heightOf(around, joint);
    return z === null || y === null ? [] : [{ joint, z, y }];
  });
  return {
    at(moment: number, side: SideFigure): FrontFigure {
      const share = (moment - from.until) / (to.frame - from.until);
      const figure: Partial<Record<JointName, FrontPoint>> = {};
      for (const { joint, z, y } of paths) {
        figure[joint] = { z: z(moment), y: y(moment, share, side) };
      }
      return figure;
    },
  };
}

function across(around: Neighbours, joint: JointName) {
  return curveBetween(around, zOf(joint), { slopeOf: parabolaSlope });
}

function zOf(joint: JointName): ValueOf {
  return ({ front }) => front[joint]?.z ?? null;
}

/** A foot stands until it leaves, and from when it lands. */
function footAcross(around: Neighbours, joint: JointName, side: Side) {
  const { before, from, to, after } = around;
  const [a, b] = [zOf(joint)(from), zOf(joint)(to)];
  if (a === null || b === null) return null;
  const [stood, stands] = [from.planted[side], to.planted[side]];
  const same = stood !== null && stands !== null && stood.from === stands.from;
  if (same) return (at: number) => mix(a, b, (at - from.until) / (to.frame - from.until));
  const leaves = Math.min(Math.max(from.until, stood?.to ?? from.until), to.frame);
  const lands = stands === null ? to.frame : Math.min(to.frame, Math.max(leaves, stands.from));
  const told = (key: MotionKey | null, at: number) => {
    const value = key === null ? null : zOf(joint)(key);
    return value === null ? null : { at, value };
  };
  const start = { at: leaves, value: a };
  const end = { at: lands, value: b };
  const past = told(before, before?.until ?? 0);
  const next = told(after, after?.frame ?? 0);
  const knots = [
    { ...start, slope: stood === null ? parabolaSlope(past, start, end) : 0 },
    { ...end, slope: stands === null ? parabolaSlope(start, end, next) : 0 },
  ] as const;
  return (at: number) => {
    if (at <= leaves) return a;
    return at >= lands ? b : hermite(knots[0], knots[1], at);
  };
}

const HEIGHT = { slopeOf: monotoneSlope };

/** As high as from the side, with what the two views differ by; else by a curve of its own. */
function heightOf(around: Neighbours, joint: JointName) {
  const { from, to } = around;
  if (![from, to].every(({ front }) => Number.isFinite(front[joint]?.y))) return null;
  const [a, b] = [differs(from, joint), differs(to, joint)];
  let own: ReturnType<typeof curveBetween> = null; // asked for by few
  return (at: number, share: number, side: SideFigure): number => {
    const point = side[joint];
    if (point !== undefined && a !== null && b !== null) return point.y + mix(a, b, share);
    own ??= curveBetween(around, ({ front }) => front[joint]?.y ?? null, HEIGHT);
    return own?.(at) ?? Number.NaN;
  };
}

function differs({ side, front }: MotionKey, joint: JointName): number | null {
  const [seen, ahead] = [side[joint], front[joint]];
  return seen === undefined || ahead === undefined ? null : ahead.y - seen.y;
}
