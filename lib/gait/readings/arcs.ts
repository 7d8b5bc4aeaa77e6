import { rootSumSquare } from "../../geometry";
import { type Answer, answerOf, type NoReading } from "../answer";
import {
  ARC_NAMES,
  type ArcName,
  type ArcPoint,
  arcFrames,
  arcPoses,
  paceAlong,
  type Stretch,
  stretchOf,
} from "../arc-path";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/** The arc that a joint goes through in a stride, seen walking along with the walker. */
export interface ArcReading {
  /** The way along it. */
  readonly length: Answer;
  /** Its highest point less its lowest. */
  readonly rise: Answer;
  /** Its foremost point less its rearmost. */
  readonly sweep: Answer;
}

export type ArcReadings = Readonly<Record<ArcName, ArcReading>>;

/**
 * The arcs of hips, head, wrists and ankles from a contact to the same foot's next, in every drawn frame along
 * the in-betweens. What the hips travel evenly is taken off, so that an arc is as it is seen on the spot.
 *
 * Units:   leg lengths
 * Errors:  none; an arc whose joint is not marked in every pose of the stride answers "cannot-tell"
 * Source:  ± of the length: what the marks' own ± adds where the arc turns, most where it turns back
 */
export function strideArcs(study: Study, from: WalkPanel, to: WalkPanel | null): ArcReadings {
  const stretch = to === null ? null : stretchOf(study, from, to);
  const read = (arc: ArcName): ArcReading => {
    if (stretch === null) return untold(NO_END);
    return arcReading(study, stretch, arc);
  };
  return Object.fromEntries(ARC_NAMES.map((arc) => [arc, read(arc)])) as unknown as ArcReadings;
}

const NO_END = "the contact that ends the stride, and places for its poses";

function arcReading(study: Study, stretch: Stretch, arc: ArcName): ArcReading {
  const marked = arc === "hips" ? "both hips" : `the ${arc.replace("-", " ")}`;
  const needs = `${marked} marked in every pose of the stride, in the side view`;
  const pace = paceAlong(stretch.from, stretch.to);
  if (pace === null)
    return untold("both hips marked at the contacts that begin and end the stride");
  const poses = arcPoses(study, stretch, arc, pace);
  const points = poses === null ? null : arcFrames(study, stretch, arc, pace);
  if (poses === null || points === null) return untold(needs);
  const length = points.slice(1).reduce((sum, point, at) => sum + away(points[at], point), 0);
  return {
    length: answerOf(length, lengthPlusMinus(poses), "leg", needs),
    rise: spread(points, ({ y }) => y, needs),
    sweep: spread(points, ({ x }) => x, needs),
  };
}

function untold(needs: string): ArcReading {
  const none: NoReading = { kind: "cannot-tell", needs };
  return { length: none, rise: none, sweep: none };
}

function spread(points: readonly ArcPoint[], at: (point: ArcPoint) => number, needs: string) {
  const values = points.map(at);
  const plusMinus = points[0]?.plusMinus ?? Number.NaN;
  const value = Math.max(...values) - Math.min(...values);
  return answerOf(value, rootSumSquare(plusMinus, plusMinus), "leg", needs);
}

function away(from: ArcPoint | undefined, to: ArcPoint): number {
  return from === undefined ? Number.NaN : Math.hypot(to.x - from.x, to.y - from.y);
}

/** A moved point lengthens its two chords by how much their directions differ; at an end there is but one. */
function lengthPlusMinus(poses: readonly ArcPoint[]): number {
  const directions = poses.slice(1).map((point, at) => {
    const from = poses[at];
    const length = away(from, point);
    if (from === undefined || !(length > 0)) return { x: 0, y: 0 };
    return { x: (point.x - from.x) / length, y: (point.y - from.y) / length };
  });
  const still = { x: 0, y: 0 };
  const parts = poses.map(({ plusMinus }, at) => {
    const [back, ahead] = [directions[at - 1] ?? still, directions[at] ?? still];
    return plusMinus * Math.hypot(ahead.x - back.x, ahead.y - back.y);
  });
  return rootSumSquare(...parts);
}
