import type { JointName, SidePoint } from "../../body";
import type { GroundFigure, MotionKey, Planted, SideFigure } from "./motion-key";

/** How far a loop goes in one round. */
interface Round {
  readonly frames: number;
  /** Leg lengths along the ground. */
  readonly along: number;
}

/** What stands beyond the ends of a row of poses, two and two, in order of time. */
interface Beyond {
  readonly before: readonly [MotionKey | null, MotionKey | null];
  readonly after: readonly [MotionKey | null, MotionKey | null];
}

/**
 * The poses around a loop's ends: before its first the last but one and the one before that, a round earlier,
 * and after its last the second and the third, a round later.
 */
export function looped(keys: readonly MotionKey[]): Beyond {
  const round = keys.length < 3 ? null : roundOf(keys);
  const moved = (at: number, rounds: 1 | -1) => {
    const key = keys.at(at);
    return round === null || key === undefined ? null : shifted(key, round, rounds);
  };
  return { before: [moved(-3, -1), moved(-2, -1)], after: [moved(1, 1), moved(2, 1)] };
}

/** How a moment outside a loop is told from one within it; null where the poses make no loop. */
export function cycleOf(keys: readonly MotionKey[]) {
  const round = roundOf(keys);
  const first = keys[0];
  if (round === null || first === undefined) return null;
  return {
    unrolled(moment: number, within: (moment: number) => GroundFigure | null): GroundFigure | null {
      const rounds = Math.floor((moment - first.frame) / round.frames);
      const last = moment === first.frame + round.frames; // the last pose is as it is drawn
      if (rounds === 0 || last) return within(moment);
      const figure = within(moment - rounds * round.frames);
      if (figure === null) return null;
      return { ...figure, side: movedAlong(figure.side, rounds * round.along) };
    },
  };
}

function roundOf(keys: readonly MotionKey[]): Round | null {
  const [first, last] = [keys[0], keys.at(-1)];
  if (first === undefined || last === undefined) return null;
  const frames = last.frame - first.frame;
  const along = hipsOf(last) - hipsOf(first);
  return frames > 0 && Number.isFinite(along) ? { frames, along } : null;
}

/** Where the hips are along the walk, or whatever both ends of a loop have marked first. */
function hipsOf({ side }: MotionKey): number {
  const hips = [side["left-hip"], side["right-hip"]].filter((hip) => hip !== undefined);
  return hips.reduce((sum, { x }) => sum + x, 0) / hips.length;
}

/** One pose a round on, for as long as somebody holds it. */
const shiftedBy = new WeakMap<MotionKey, Map<string, MotionKey>>();

function shifted(key: MotionKey, { frames, along }: Round, rounds: 1 | -1): MotionKey {
  const name = `${rounds} ${frames} ${along}`;
  const before = shiftedBy.get(key)?.get(name);
  if (before !== undefined) return before;
  const later = (planted: Planted | null): Planted | null =>
    planted === null
      ? null
      : { from: planted.from + rounds * frames, to: planted.to + rounds * frames };
  const moved: MotionKey = {
    ...key,
    frame: key.frame + rounds * frames,
    until: key.until + rounds * frames,
    side: movedAlong(key.side, rounds * along),
    planted: { left: later(key.planted.left), right: later(key.planted.right) },
  };
  shiftedBy.set(key, new Map([[name, moved]]));
  return moved;
}

function movedAlong(side: SideFigure, by: number): SideFigure {
  const moved: Partial<Record<JointName, SidePoint>> = {};
  for (const [joint, point] of Object.entries(side) as [JointName, SidePoint][]) {
    moved[joint] = { x: point.x + by, y: point.y };
  }
  return moved;
}
