import { performance } from "node:perf_hooks";
import type { JointName } from "../../lib/body";
import { studyWalk } from "../../lib/gait/study";
import { walkMotion } from "../../lib/gait/walk-motion";
import { type GroundFigure, inBetweens, type MotionKey } from "../../lib/motion";
import { walk } from "../support/walk";

const ROUNDS = 300;

/**
 * What the in-betweens of a 24-frame stride cost, every joint of both views in every frame: worked out from
 * nothing, beside a straight line through the same poses.
 */
export async function benchBetween(): Promise<{ what: string; figure: string }[]> {
  const { keys } = walkMotion(studyWalk(walk(), "trade")).motion;
  const [first, last] = [keys[0], keys.at(-1)];
  if (first === undefined || last === undefined) throw new Error("the built walk has no poses");
  const frames = Array.from({ length: last.frame - first.frame }, (_, at) => first.frame + at);
  const [curves, lines]: [number[], number[]] = [[], []];
  for (let round = 0; round < ROUNDS; round += 1) {
    const unread = keys.map((key) => ({ ...key }));
    curves.push(
      timed(() => {
        const motion = inBetweens(unread, { loop: true });
        return frames.map((frame) => motion.at(frame));
      }),
    );
    lines.push(timed(() => frames.map((frame) => onLine(unread, frame))));
  }
  const [curve, line] = [median(curves), median(lines)];
  const joints = Object.keys(first.side).length + Object.keys(first.front).length;
  return [
    {
      what: `in-betweens of a stride: ${frames.length} frames, ${keys.length} poses, ${joints} marks`,
      figure: `p50 ${curve.toFixed(3)} ms, ×${(curve / line).toFixed(1)} a straight line's ${line.toFixed(3)} ms`,
    },
  ];
}

function timed(run: () => unknown): number {
  const from = performance.now();
  run();
  return performance.now() - from;
}

/** Of the later two thirds: the first warm the machine up. */
function median(milliseconds: readonly number[]): number {
  const warm = milliseconds.slice(milliseconds.length / 3).toSorted((a, b) => a - b);
  return warm[Math.floor(warm.length / 2)] ?? Number.NaN;
}

/** The floor: every joint straight from one pose to the next. */
function onLine(keys: readonly MotionKey[], frame: number): GroundFigure | null {
  const at = keys.findLastIndex((key) => key.frame <= frame);
  const [from, to] = [keys[at], keys[at + 1]];
  if (from === undefined || to === undefined) return from ?? null;
  const share = (frame - from.frame) / (to.frame - from.frame);
  const mix = (one: number, other: number) => one + share * (other - one);
  const side: Partial<Record<JointName, { x: number; y: number }>> = {};
  const front: Partial<Record<JointName, { z: number; y: number }>> = {};
  for (const joint of Object.keys(from.side) as JointName[]) {
    const [a, b] = [from.side[joint], to.side[joint]];
    if (a !== undefined && b !== undefined) side[joint] = { x: mix(a.x, b.x), y: mix(a.y, b.y) };
  }
  for (const joint of Object.keys(from.front) as JointName[]) {
    const [a, b] = [from.front[joint], to.front[joint]];
    if (a !== undefined && b !== undefined) front[joint] = { z: mix(a.z, b.z), y: mix(a.y, b.y) };
  }
  return { side, front };
}
