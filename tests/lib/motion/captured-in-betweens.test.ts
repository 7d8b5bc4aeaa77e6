import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { SIDES, type Side } from "../../../lib/body";
import { inBetweens, type SideFigure } from "../../../lib/motion";
import { CLIPS, readClip, type SpaceFigure, WALKS } from "../../support/captured-motion";
import { type Group, inBetweenErrors, keysOf } from "../../support/in-between-errors";

/** Of the straight line's error, at most this share may be left: seen from the side. */
const SIDE: Readonly<Record<Group, { mean: number; worst: number }>> = {
  hips: { mean: 0.7, worst: 0.8 },
  knees: { mean: 0.65, worst: 0.95 },
  ankles: { mean: 0.35, worst: 0.4 },
  soles: { mean: 0.35, worst: 0.4 },
  trunk: { mean: 0.8, worst: 1.3 }, // a dancer's shoulders, restless between two poses
  elbows: { mean: 0.7, worst: 0.8 },
  wrists: { mean: 0.5, worst: 0.7 },
};

const there = existsSync(CLIPS);

describe.skipIf(!there)("captured walks rebuilt from four poses a step", () => {
  const rows = there ? inBetweenErrors(WALKS) : [];

  it.each(Object.entries(SIDE))("lie nearer than on straight lines: %s", (group, share) => {
    const row = rows.find((one) => one.group === group && one.view === "side");
    if (row === undefined) throw new Error(`no ${group}`);
    expect(row.between.mean / row.straight.mean).toBeLessThan(share.mean);
    expect(row.between.worst / row.straight.worst).toBeLessThan(share.worst);
  });

  it("lie nearer from ahead, too, on the mean", () => {
    for (const row of rows.filter(({ view }) => view === "front")) {
      expect(row.between.mean, row.group).toBeLessThan(row.straight.mean);
    }
  });

  it.each(WALKS)("pass through every pose exactly: %s", (name) => {
    const keys = keysOf(readClip(name));
    const motion = inBetweens(keys);
    for (const key of keys) {
      expect(motion.at(key.frame)).toMatchObject({ side: key.side, front: key.front });
      // And do not jump on the way there.
      for (const near of [key.frame - 1e-6, key.frame + 1e-6]) {
        const figure = motion.at(near)?.side ?? {};
        for (const [joint, point] of Object.entries(key.side))
          expect(away(figure, joint, point), `${joint} at ${near}`).toBeLessThan(1e-4);
      }
    }
  });

  it.each(WALKS)("keep thigh and shank between the lengths of their poses: %s", (name) => {
    const keys = keysOf(readClip(name));
    const motion = inBetweens(keys);
    for (const { from, to } of motion.spans) {
      for (let frame = from.frame; frame <= to.frame; frame += 0.5) {
        for (const bone of BONES) {
          const now = lengthOf(motion.at(frame)?.side ?? {}, bone);
          const ends = [lengthOf(from.side, bone), lengthOf(to.side, bone)];
          expect(now).toBeGreaterThan(Math.min(...ends) - 0.005);
          expect(now).toBeLessThan(Math.max(...ends) + 0.005);
        }
      }
    }
  });

  it.each(WALKS)("hold a foot that stands to its footprint: %s", (name) => {
    const clip = readClip(name);
    const motion = inBetweens(keysOf(clip));
    for (const { from, to } of motion.spans) {
      for (const side of SIDES) {
        const [stood, stands] = [from.planted[side], to.planted[side]];
        if (stood === null || stood.from !== stands?.from) continue;
        const frames = Array.from(
          { length: 1 + to.frame - from.frame },
          (_, at) => from.frame + at,
        );
        const drift = crept(
          frames.map((frame) => motion.at(frame)?.side ?? {}),
          side,
        );
        const really = crept(
          frames.map((frame) => flat(clip.figure(frame))),
          side,
        );
        expect(drift, `${side} from ${from.frame}`).toBeLessThan(Math.max(0.01, 1e-9 + really));
      }
    }
  });
});

/** How far the point that a foot stands on creeps along the ground, all in all. Leg lengths. */
function crept(figures: readonly SideFigure[], side: Side): number {
  const sole = (["heel", "ball", "toe"] as const).map((part) => `${side}-${part}` as const);
  return figures.slice(1).reduce((sum, now, at) => {
    const [low] = sole.toSorted((a, b) => (now[a]?.y ?? 0) - (now[b]?.y ?? 0));
    const was = figures[at] ?? {};
    return low === undefined ? sum : sum + Math.abs((now[low]?.x ?? 0) - (was[low]?.x ?? 0));
  }, 0);
}

function flat(figure: SpaceFigure): SideFigure {
  return Object.fromEntries([...figure].map(([joint, { x, y }]) => [joint, { x, y }]));
}

const BONES = SIDES.flatMap((side) => [
  [`${side}-hip`, `${side}-knee`] as const,
  [`${side}-knee`, `${side}-ankle`] as const,
]);

function lengthOf(figure: SideFigure, [from, to]: (typeof BONES)[number]): number {
  const [a, b] = [figure[from], figure[to]];
  return a === undefined || b === undefined ? Number.NaN : Math.hypot(b.x - a.x, b.y - a.y);
}

function away(figure: SideFigure, joint: string, { x, y }: { x: number; y: number }): number {
  const point = figure[joint as keyof SideFigure];
  return point === undefined ? Number.NaN : Math.hypot(point.x - x, point.y - y);
}
