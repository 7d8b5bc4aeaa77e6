import { type LimbJoint, limbJoint, type Side, type SidePoint } from "../../body";
import { mixedPoint } from "./mix";
import type { MotionKey } from "./motion-key";

export const FOOT_PARTS = ["heel", "ball", "toe", "ankle"] as const satisfies readonly LimbJoint[];
export type FootPart = (typeof FOOT_PARTS)[number];
export type FootPoints = Partial<Record<FootPart, SidePoint>>;

/** What of a foot two poses both have marked, and how its pitch is told by it. */
export interface FootFrame {
  readonly parts: readonly FootPart[];
  /** The two whose line turns with the foot; null where fewer are marked. */
  readonly line: readonly [FootPart, FootPart] | null;
  /** What is carried through the air. */
  readonly carrier: FootPart;
}

const LINES: readonly (readonly [FootPart, FootPart])[] = [
  ["heel", "ball"],
  ["heel", "toe"],
  ["ankle", "ball"],
  ["ankle", "toe"],
  ["ball", "toe"],
  ["ankle", "heel"],
];

/** Null where the two poses have no part of the foot in common. */
export function footFrame(from: MotionKey, to: MotionKey, side: Side): FootFrame | null {
  const parts = FOOT_PARTS.filter(
    (part) => pointOf(from, side, part) !== null && pointOf(to, side, part) !== null,
  );
  const carrier = parts.at(-1); // the ankle, where it is marked
  if (carrier === undefined) return null;
  const line = LINES.find((pair) => pair.every((part) => parts.includes(part))) ?? null;
  return { parts, line, carrier };
}

export function pointOf(key: MotionKey, side: Side, part: FootPart): SidePoint | null {
  return key.side[limbJoint(side, part)] ?? null;
}

/** A foot's shape apart from where it is and how it is turned: its parts about the first. Leg lengths. */
export interface FootShape {
  readonly pitch: number;
  readonly local: FootPoints;
}

/** The shape of a foot in a pose; null where it lacks a part of the frame. Pitch in radians, toe up positive. */
export function footShape(key: MotionKey, side: Side, frame: FootFrame): FootShape | null {
  const [first] = frame.parts;
  const root = first === undefined ? null : pointOf(key, side, first);
  if (root === null) return null;
  const pitch = pitchOf(key, side, frame.line);
  if (pitch === null) return null;
  const local: FootPoints = {};
  for (const part of frame.parts) {
    const point = pointOf(key, side, part);
    if (point === null) return null;
    local[part] = turnedBy({ x: point.x - root.x, y: point.y - root.y }, -pitch);
  }
  return { pitch, local };
}

function pitchOf(key: MotionKey, side: Side, line: FootFrame["line"]): number | null {
  if (line === null) return 0;
  const [from, to] = [pointOf(key, side, line[0]), pointOf(key, side, line[1])];
  if (from === null || to === null) return null;
  return Math.atan2(to.y - from.y, to.x - from.x);
}

export function turnedBy({ x, y }: SidePoint, angle: number): SidePoint {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}

/** A shape on the way from one to another. */
export function shapeBetween(from: FootPoints, to: FootPoints, share: number): FootPoints {
  const mixed: FootPoints = {};
  for (const part of FOOT_PARTS) {
    const [start, end] = [from[part], to[part]];
    if (start === undefined || end === undefined) continue;
    mixed[part] = mixedPoint(start, end, share);
  }
  return mixed;
}
