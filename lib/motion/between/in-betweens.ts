import { JOINTS, type JointName, type Side } from "../../body";
import { gathered } from "../../gathered";
import { VIEWS, type View } from "../../geometry";
import { requireFinite } from "../../require";
import { frontBetween } from "./front-between";
import { cycleOf, looped } from "./looped";
import type { GroundFigure, MotionKey, SideFigure } from "./motion-key";
import { type Neighbours, neighboursOf } from "./neighbours";
import { onceAsked } from "./once-asked";
import { sideBetween } from "./side-between";

/** Two poses that follow each other, and the figure at any moment between them. */
export interface MotionSpan {
  readonly from: MotionKey;
  readonly to: MotionKey;
  /** Joints that only one of the two has marked: between them they are not known. */
  readonly missing: readonly { readonly view: View; readonly joint: JointName }[];
  /** Hips, knees and feet alone, from the side: what most readings need. */
  legs(moment: number): SideFigure;
  /** Hips, and the knee and foot of one side; on a pose all that is drawn. */
  leg(side: Side, moment: number): SideFigure;
  /** All that is seen from the side. */
  seen(moment: number): SideFigure;
  /** The figure at a moment from `from.frame` to `to.frame`; at both exactly as it is drawn. */
  at(moment: number): GroundFigure;
}

/** A walk as motion. */
export interface Motion {
  /** Its poses, in order; of several on one frame the last. */
  readonly keys: readonly MotionKey[];
  readonly spans: readonly MotionSpan[];
  /** The frames from the first pose to the last. */
  readonly from: number;
  readonly to: number;
  /**
   * The figure at a moment: frames, whole or not. Before the first pose and after the last an open walk
   * stands still, a looped one goes on. Null where there is no pose at all.
   */
  at(moment: number): GroundFigure | null;
}

/**
 * The figure between the drawn poses: feet held to their footprints and rolled over heel, ball and toe,
 * hips on a spline through the poses, knees between them with the bones' own lengths, trunk, head and arms
 * turned. Through every pose exactly; a joint that one of two poses lacks is not known between them.
 *
 * A span is worked out from its own two poses and the one on either side, and remembered with them: after
 * one changed pose at most four spans are worked out again, and a fifth or sixth where poses crowd.
 *
 * Shapes:  poses in the order of their frames
 * Units:   frames, leg lengths
 * Errors:  RangeError where a pose's frames are not finite
 * @param loop whether the last pose is the first again, one stride on
 */
export function inBetweens(poses: readonly MotionKey[], { loop = false } = {}): Motion {
  for (const { frame, until } of poses) requireFinite("inBetweens", { frame, until });
  const keys = inTime(poses);
  const [first, last] = [keys[0], keys.at(-1)];
  const around = loop ? looped(keys) : OPEN;
  const row = [...around.before, ...keys, ...around.after];
  const spans = gathered(keys.slice(1), (to, at) => {
    const from = keys[at];
    if (from === undefined) return [];
    return [spanOf(neighboursOf({ from, to }, row.slice(at, at + 2), row.slice(at + 4, at + 6)))];
  });
  const cycle = loop ? cycleOf(keys) : null;
  const within = (moment: number): GroundFigure | null => {
    if (first === undefined || last === undefined) return null;
    if (moment >= last.frame) return last;
    const span = spans.findLast(({ from }) => from.frame <= moment);
    return span === undefined ? first : span.at(moment);
  };
  return {
    keys,
    spans,
    from: first?.frame ?? Number.NaN,
    to: last?.frame ?? Number.NaN,
    at(moment) {
      requireFinite("inBetweens", { moment });
      if (cycle === null) return within(moment);
      return cycle.unrolled(moment, within);
    },
  };
}

/** Nothing stands before an open walk's first pose and after its last. */
const OPEN = { before: [null, null], after: [null, null] } as const;

/** Poses in time, each on a frame of its own, none kept beyond the next. */
function inTime(poses: readonly MotionKey[]): readonly MotionKey[] {
  return gathered(poses, (pose, at) => {
    const next = poses.slice(at + 1).find(({ frame }) => frame !== pose.frame);
    const isLast = poses[at + 1] === undefined || (poses[at + 1]?.frame ?? 0) > pose.frame;
    if (!isLast) return [];
    const most = next?.frame ?? pose.until;
    return [pose.until > most ? { ...pose, until: most } : pose];
  });
}

/** What was worked out between poses, for as long as somebody holds the first of them. */
const known = new WeakMap<MotionKey, { readonly around: Neighbours; readonly span: MotionSpan }>();

function spanOf(around: Neighbours): MotionSpan {
  const before = known.get(around.from);
  if (before !== undefined && sameAround(before.around, around)) return before.span;
  const span = newSpan(around);
  known.set(around.from, { around, span });
  return span;
}

const AROUND = ["earlier", "before", "to", "after", "later"] as const;

function sameAround(one: Neighbours, other: Neighbours): boolean {
  return AROUND.every((name) => one[name] === other[name]);
}

function newSpan(around: Neighbours): MotionSpan {
  const { from, to } = around;
  const side = onceAsked(() => sideBetween(around));
  const front = onceAsked(() => frontBetween(around));
  const missing = onceAsked(() => missingIn(from, to));
  const drawnAt = (moment: number) => {
    if (moment <= from.until) return from;
    return moment >= to.frame ? to : null;
  };
  return {
    from,
    to,
    get missing() {
      return missing();
    },
    legs: (moment) => drawnAt(moment)?.side ?? side().legs(moment),
    leg: (asked, moment) => drawnAt(moment)?.side ?? side().leg(asked, moment),
    seen: (moment) => drawnAt(moment)?.side ?? side().at(moment),
    at(moment) {
      const drawn = drawnAt(moment);
      if (drawn !== null) return drawn;
      const seen = side().at(moment);
      return { side: seen, front: front().at(moment, seen) };
    },
  };
}

function missingIn(from: MotionKey, to: MotionKey): MotionSpan["missing"] {
  return gathered(VIEWS, (view) =>
    JOINTS.filter((joint) => joint in from[view] !== joint in to[view]).map((joint) => ({
      view,
      joint,
    })),
  );
}
