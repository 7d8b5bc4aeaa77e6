import { JOINTS, type JointName, otherSide, type Side } from "../../lib/body";
import { inBetweens, type MotionKey, type Planted } from "../../lib/motion";
import type { Clip, ClipStep, SpaceFigure, SpacePoint } from "./captured-motion";

const GROUPS = {
  hips: ["hip"],
  knees: ["knee"],
  ankles: ["ankle"],
  soles: ["heel", "ball", "toe"],
  trunk: ["head", "neck", "shoulder"],
  elbows: ["elbow"],
  wrists: ["wrist"],
} as const;
export type Group = keyof typeof GROUPS;

/** How far a rebuilt joint lies from the captured one. Leg lengths. */
export interface Errors {
  readonly mean: number;
  readonly worst: number;
  /** Of how many joints in how many frames, multiplied. */
  readonly count: number;
}

export interface Compared {
  readonly group: Group;
  readonly view: "side" | "front";
  readonly straight: Errors;
  readonly between: Errors;
}

/** When the toe of the other foot leaves, as a share of the step: 12 % of the stride (Perry). */
const LEAVES = 0.24;

/** The four poses of every step of a clip, and the contact that ends the last: all that an artist would draw. */
export function keysOf(clip: Clip): readonly MotionKey[] {
  const planted = plantedIn(clip.steps);
  const frames = clip.steps.flatMap((step) => [step.contact, step.down, step.passing, step.up]);
  const all = [...new Set([...frames, clip.steps.at(-1)?.next ?? 0])].toSorted((a, b) => a - b);
  return all.map((frame) => {
    const figure = clip.figure(frame);
    const at = (side: Side) =>
      planted.find((one) => one.side === side && one.from <= frame && frame < one.to) ?? null;
    return {
      frame,
      until: frame,
      side: view(figure, ({ x, y }) => ({ x, y })),
      front: view(figure, ({ z, y }) => ({ z, y })),
      planted: { left: at("left"), right: at("right") },
    };
  });
}

function view<Point>(figure: SpaceFigure, seen: (point: SpacePoint) => Point) {
  return Object.fromEntries([...figure].map(([joint, point]) => [joint, seen(point)]));
}

/** When each foot stands: from its contact until 0.24 of the step after the next. */
function plantedIn(steps: readonly ClipStep[]): readonly (Planted & { readonly side: Side })[] {
  const [first, last] = [steps[0], steps.at(-1)];
  if (first === undefined || last === undefined) return [];
  const after = (step: ClipStep) => step.contact + LEAVES * (step.next - step.contact);
  const long = last.next - last.contact;
  return [
    { side: otherSide(first.lead), from: 2 * first.contact - first.next, to: after(first) },
    ...steps.map((step, nth) => {
      const next = steps[nth + 1];
      const to = next === undefined ? step.next + LEAVES * long : after(next);
      return { side: step.lead, from: step.contact, to };
    }),
    { side: otherSide(last.lead), from: last.next, to: last.next + (1 + LEAVES) * long },
  ];
}

/** The same keys' joints on a straight line from one to the next. */
function straight(keys: readonly MotionKey[], frame: number, joint: JointName): SpacePoint | null {
  const at = keys.findLastIndex((key) => key.frame <= frame);
  const from = keys[at];
  const to = keys[at + 1] ?? from;
  const [a, b] = [pointOf(from, joint), pointOf(to, joint)];
  if (from === undefined || to === undefined || a === null || b === null) return null;
  const share = to === from ? 0 : (frame - from.frame) / (to.frame - from.frame);
  const mix = (one: number, other: number) => one + share * (other - one);
  return { x: mix(a.x, b.x), y: mix(a.y, b.y), z: mix(a.z, b.z) };
}

function pointOf(
  figure: Pick<MotionKey, "side" | "front"> | null | undefined,
  joint: JointName,
): SpacePoint | null {
  const [side, front] = [figure?.side[joint], figure?.front[joint]];
  return side === undefined || front === undefined ? null : { ...side, z: front.z };
}

/** Frames of a clip from one that is looked at to the next: 60 in a second. */
const EVERY = 2;

/**
 * Rebuilds every second frame of a clip from four poses a step, and holds each joint against the captured one,
 * beside a straight line through the same poses.
 */
export function inBetweenErrors(clip: Clip): readonly Compared[] {
  const told = new Map<string, { straight: number[]; between: number[] }>();
  const keys = keysOf(clip);
  const motion = inBetweens(keys);
  for (let frame = motion.from; frame <= motion.to; frame += EVERY) {
    const [truth, figure] = [clip.figure(frame), motion.at(frame)];
    for (const joint of JOINTS) {
      const is = truth.get(joint);
      const [line, curve] = [straight(keys, frame, joint), pointOf(figure, joint)];
      if (is === undefined) continue;
      if (line === null || curve === null) throw new Error(`no ${joint} at ${frame}`);
      for (const seen of ["side", "front"] as const) {
        const name = `${groupOf(joint)} ${seen}`;
        const kept = told.get(name) ?? { straight: [], between: [] };
        kept.straight.push(off(line, is, seen));
        kept.between.push(off(curve, is, seen));
        told.set(name, kept);
      }
    }
  }
  return [...told].map(([name, { straight: lines, between }]) => {
    const [group, seen] = name.split(" ") as [Group, "side" | "front"];
    return { group, view: seen, straight: errorsOf(lines), between: errorsOf(between) };
  });
}

/** Several clips' errors as one clip's. */
export function pooled(clips: readonly (readonly Compared[])[]): readonly Compared[] {
  const [first = [], ...others] = clips;
  return others.reduce(
    (all, rows) =>
      all.map((row) => {
        const own = rows.find(({ group, view: seen }) => group === row.group && seen === row.view);
        if (own === undefined) throw new Error(`no ${row.group} in a clip`);
        const straight = together(row.straight, own.straight);
        return { ...row, straight, between: together(row.between, own.between) };
      }),
    first,
  );
}

function together(one: Errors, other: Errors): Errors {
  const count = one.count + other.count;
  return {
    mean: (one.mean * one.count + other.mean * other.count) / count,
    worst: Math.max(one.worst, other.worst),
    count,
  };
}

/** As a table for people: percent of a leg, mean and worst. */
export function errorTable(rows: readonly Compared[]): string {
  const percent = ({ mean, worst }: Errors) =>
    `${(100 * mean).toFixed(2)} / ${(100 * worst).toFixed(1)}`;
  return rows
    .map(({ group, view: seen, straight: line, between }) =>
      [
        group.padEnd(8),
        seen.padEnd(6),
        percent(line).padEnd(14),
        percent(between).padEnd(14),
        `mean ×${(between.mean / line.mean).toFixed(2)}`,
        `worst ×${(between.worst / line.worst).toFixed(2)}`,
      ].join(" "),
    )
    .join("\n");
}

function groupOf(joint: JointName): Group {
  const part = joint.replace(/^(left|right)-/, "");
  const found = Object.entries(GROUPS).find(([, parts]) =>
    (parts as readonly string[]).includes(part),
  );
  if (found === undefined) throw new Error(`no group for ${joint}`);
  return found[0] as Group;
}

function off(one: SpacePoint, other: SpacePoint, seen: "side" | "front"): number {
  return seen === "side"
    ? Math.hypot(one.x - other.x, one.y - other.y)
    : Math.hypot(one.z - other.z, one.y - other.y);
}

function errorsOf(errors: readonly number[]): Errors {
  return {
    mean: errors.reduce((sum, one) => sum + one, 0) / errors.length,
    worst: errors.reduce((most, one) => Math.max(most, one), 0),
    count: errors.length,
  };
}
