import type { JointName, SidePoint } from "../body";
import { gathered } from "../gathered";
import { rootSumSquare } from "../geometry";
import type { Frame, MotionKey, MotionSpan, SideFigure } from "../motion";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";
import { type WalkMotion, walkMotion } from "./walk-motion";

/** What arcs are followed of, and by which marks; the hips by the middle between both. */
export const ARC_JOINTS = {
  hips: ["left-hip", "right-hip"],
  head: ["head"],
  "left-wrist": ["left-wrist"],
  "right-wrist": ["right-wrist"],
  "left-ankle": ["left-ankle"],
  "right-ankle": ["right-ankle"],
} as const satisfies Readonly<Record<string, readonly JointName[]>>;
export type ArcName = keyof typeof ARC_JOINTS;
export const ARC_NAMES = Object.keys(ARC_JOINTS) as readonly ArcName[];

/** A point of an arc, seen walking along. Leg lengths. */
export interface ArcPoint extends SidePoint {
  readonly frame: Frame;
  /** ± of a mark of it in the poses: the coarsest. */
  readonly plusMinus: number;
}

/** A stretch of a walk's motion, from one of its poses to another. */
export interface Stretch {
  readonly motion: WalkMotion;
  readonly from: MotionKey;
  readonly to: MotionKey;
  /** Frames from one drawing that is followed to the next. */
  readonly every: number;
}

/** Null where a panel is none of the poses of the motion, or there is nothing between them. */
export function stretchOf(
  study: Study,
  from: WalkPanel,
  to: WalkPanel,
  every: number = study.walk.exposure,
): Stretch | null {
  const motion = walkMotion(study);
  const keyOf = (panel: WalkPanel) =>
    motion.motion.keys.find((key) => motion.panelOf.get(key) === panel);
  const [first, last] = [keyOf(from), keyOf(to)];
  if (first === undefined || last === undefined || !(last.frame > first.frame)) return null;
  return { motion, from: first, to: last, every };
}

/**
 * How fast one walks along with the walker: evenly, as far as the hips go from a pose to another. So an arc
 * looks as it does where the walk is played on the spot.
 *
 * Units:   leg lengths a frame
 * Errors:  null where a hip lacks at either end
 */
export function paceAlong(from: MotionKey, to: MotionKey): number | null {
  const [was, is] = [pointOf(from.side, "hips"), pointOf(to.side, "hips")];
  const pace = was === null || is === null ? Number.NaN : (is.x - was.x) / (to.frame - from.frame);
  return Number.isFinite(pace) ? pace : null;
}

/** The poses of a stretch, in time. */
export function keysIn({ motion, from, to }: Stretch): readonly MotionKey[] {
  return motion.motion.keys.filter(({ frame }) => frame >= from.frame && frame <= to.frame);
}

/**
 * An arc from pose to pose of a stretch; null where one of them lacks a mark of it.
 *
 * @param pace as of `paceAlong`
 */
export function arcPoses(
  study: Study,
  stretch: Stretch,
  arc: ArcName,
  pace: number,
): readonly ArcPoint[] | null {
  const plusMinus = coarsest(study, stretch, arc);
  if (plusMinus === null) return null;
  const points = gathered(keysIn(stretch), ({ side, frame }): ArcPoint[] => {
    const point = pointOf(side, arc);
    return point === null ? [] : [{ frame, x: point.x - pace * frame, y: point.y, plusMinus }];
  });
  return points.length < keysIn(stretch).length ? null : points;
}

/**
 * The same in every drawn frame of the stretch, along the in-betweens.
 */
export function arcFrames(
  study: Study,
  stretch: Stretch,
  arc: ArcName,
  pace: number,
): readonly ArcPoint[] | null {
  const plusMinus = coarsest(study, stretch, arc);
  if (plusMinus === null) return null;
  const points: ArcPoint[] = [];
  for (const span of stretch.motion.motion.spans) {
    if (span.from.frame < stretch.from.frame || span.to.frame > stretch.to.frame) continue;
    for (const { frame, side } of drawnIn(span, stretch.every)) {
      const point = pointOf(side, arc);
      if (point === null) return null;
      if (frame === points.at(-1)?.frame) continue;
      points.push({ frame, x: point.x - pace * frame, y: point.y, plusMinus });
    }
  }
  return points;
}

interface Drawn {
  readonly frame: Frame;
  readonly side: SideFigure;
}

/** What is drawn from one pose to the next, for as long as somebody holds the motion between them. */
const drawn = new WeakMap<MotionSpan, Map<number, readonly Drawn[]>>();

function drawnIn(span: MotionSpan, every: number): readonly Drawn[] {
  const known = drawn.get(span) ?? new Map<number, readonly Drawn[]>();
  const before = known.get(every);
  if (before !== undefined) return before;
  const frames: Drawn[] = [];
  const gap = span.to.frame - span.from.frame;
  const count = Math.max(1, Math.round(gap / every));
  for (let nth = 0; nth < count; nth += 1) {
    const frame = span.from.frame + Math.round((nth * gap) / count);
    frames.push({ frame, side: span.seen(frame) });
  }
  frames.push({ frame: span.to.frame, side: span.to.side });
  drawn.set(span, known.set(every, frames));
  return frames;
}

/** Null where a pose of the stretch lacks a mark of the arc. */
function coarsest(study: Study, stretch: Stretch, arc: ArcName): number | null {
  const joints: readonly JointName[] = ARC_JOINTS[arc];
  let most = 0;
  for (const key of keysIn(stretch)) {
    const panel = stretch.motion.panelOf.get(key);
    const own = joints.map((joint) => panel && study.seen(panel, joint)?.plusMinus);
    const plusMinus = rootSumSquare(...own.map((one) => one ?? Number.NaN)) / joints.length;
    if (!Number.isFinite(plusMinus)) return null;
    most = Math.max(most, plusMinus);
  }
  return most;
}

function pointOf(side: SideFigure, arc: ArcName): SidePoint | null {
  let [x, y] = [0, 0];
  const joints: readonly JointName[] = ARC_JOINTS[arc];
  for (const joint of joints) {
    const point = side[joint];
    if (point === undefined) return null;
    x += point.x / joints.length;
    y += point.y / joints.length;
  }
  return { x, y };
}
