import { gathered } from "../gathered";
import type { Point } from "../geometry";
import type { Landmark, Landmarks } from "./landmark";
import type { Mark, ViewMarks } from "./mark";
import { markOf } from "./mark-of";
import { BODY_PARTS, type MassModel, type SegmentEnd } from "./mass-models";

/** Where a figure's mass is centred, of the parts that are marked. Units: panel units, y down. */
export interface CentreOfMass extends Point {
  /** Share of the body's mass that the marked parts make up; 1 when all are. A load is not counted in. */
  readonly share: number;
  /** ± of x and y from the marks alone. */
  readonly plusMinus: number;
  /** Parts that the marks do not tell: "left forearm"; "load" where it weighs and is not marked. */
  readonly missing: readonly string[];
}

/** By whose masses, and what is carried. */
export interface Weighing {
  readonly model?: MassModel;
  /** The load's mass as a share of the body's; 0 when nothing is carried. */
  readonly load?: number;
}

/** A lump of mass: a part of the body, or the load. */
interface Lump extends Mark {
  readonly mass: number;
}

/**
 * The centre of mass of the parts that are marked in one view, a carried load among them, or null when no
 * part is.
 *
 * Shapes:  joints, and more landmarks where they are known
 * Units:   those of the marks; a load in shares of body mass
 * Errors:  none; a load that is no positive number weighs nothing
 * Source:  de Leva (1996) or Dempster, see `BODY_PARTS`
 *
 * @example
 * const at = (x, y) => ({ x, y, precision: 0 });
 * const shank = centreOfMass({ "left-knee": at(0, 0), "left-ankle": at(0, 100) }, { model: "male" });
 * [shank.y, shank.share]; // => [43.95, 0.0433]
 */
export function centreOfMass(
  marks: Landmarks,
  { model = "mean", load = 0 }: Weighing = {},
): CentreOfMass | null {
  const missing: string[] = [];
  const body = gathered(BODY_PARTS[model], ({ name, mass, lines }): Lump[] => {
    for (const { ends, at } of lines) {
      const [from, to] = [endOf(marks, ends[0]), endOf(marks, ends[1])];
      if (from !== null && to !== null) return [{ mass, ...between(from, to, at) }];
    }
    missing.push(name);
    return [];
  });
  if (body.length === 0) return null;
  const carried = load > 0 ? landmark(marks, "load") : null;
  if (load > 0 && carried === null) missing.push("load");
  const lumps = carried === null ? body : [...body, { ...carried, mass: load }];
  const total = massOf(lumps);
  const weigh = (of: (lump: Lump) => number) =>
    lumps.reduce((sum, lump) => sum + lump.mass * of(lump), 0) / total;
  return {
    x: weigh(({ x }) => x),
    y: weigh(({ y }) => y),
    share: massOf(body),
    // Marks are shared between parts, so their errors do not cancel: the sum is on the safe side.
    plusMinus: weigh(({ precision }) => precision),
    missing,
  };
}

function massOf(lumps: readonly Lump[]): number {
  return lumps.reduce((sum, { mass }) => sum + mass, 0);
}

function endOf(marks: Landmarks, end: SegmentEnd): Mark | null {
  if (end === "mid-hips") return middle(marks, "left-hip", "right-hip");
  if (end === "mid-shoulders") return middle(marks, "left-shoulder", "right-shoulder");
  return landmark(marks, end);
}

/** Between both, or the one that is marked. */
function middle(marks: Landmarks, one: Landmark, other: Landmark): Mark | null {
  const [left, right] = [landmark(marks, one), landmark(marks, other)];
  if (left === null || right === null) return left ?? right;
  return between(left, right, 0.5);
}

/** A board's joints are landmarks, so one guard serves both. */
function landmark(marks: Landmarks, name: Landmark): Mark | null {
  return markOf(marks as ViewMarks, name as keyof ViewMarks);
}

function between(from: Mark, to: Mark, share: number): Mark {
  const mix = (a: number, b: number) => a + share * (b - a);
  return {
    x: mix(from.x, to.x),
    y: mix(from.y, to.y),
    precision: mix(from.precision, to.precision),
  };
}
