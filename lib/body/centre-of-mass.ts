import type { Point } from "../geometry";
import { SIDES, type Side } from "./joint";
import type { ViewMarks } from "./mark";
import { markOf } from "./mark-of";

/** Where a figure's mass is centred, of the parts that are marked. Units: panel units, y down. */
export interface CentreOfMass extends Point {
  /** Share of the body's mass that the marked parts make up; 1 when all are. */
  readonly share: number;
  /** ± of x and y from the marks alone. */
  readonly plusMinus: number;
}

/** A part of the body: its share of the mass, and where along it the mass is centred. */
interface Part {
  readonly mass: number;
  /** From the first end, as a share of the part's length. */
  readonly at: number;
  readonly ends: readonly [End | null, End | null];
}
interface End extends Point {
  readonly precision: number;
}

/**
 * Means of women and men.
 * Source: de Leva (1996), J Biomech 29:1223, table 4. The trunk runs from the middle of the
 * shoulders, or from the cervicale where those are not marked, to the middle of the hips. The head's
 * mass is put at the head's mark and a hand's at the wrist, whose own ends are no marks of ours.
 */
const MASS = {
  head: { mass: 0.0681, at: 0 },
  trunkFromShoulders: { mass: 0.4302, at: 0.4046 },
  trunkFromNeck: { mass: 0.4302, at: 0.5051 },
  upperArm: { mass: 0.0263, at: 0.5763 },
  forearm: { mass: 0.015, at: 0.4567 },
  hand: { mass: 0.0059, at: 0 },
  thigh: { mass: 0.1447, at: 0.3854 },
  shank: { mass: 0.0457, at: 0.4374 },
  foot: { mass: 0.0133, at: 0.4215 },
} as const;

/**
 * The centre of mass of the parts that are marked in one view, or null when none is.
 *
 * Units:   panel units; ± likewise
 * Source:  de Leva (1996), see `MASS`
 */
export function centreOfMass(marks: ViewMarks): CentreOfMass | null {
  const parts = partsOf(marks).flatMap(({ mass, at, ends: [from, to] }) =>
    from === null || to === null ? [] : [{ mass, at, from, to }],
  );
  const share = parts.reduce((sum, { mass }) => sum + mass, 0);
  if (share === 0) return null;
  const weigh = (of: (end: End) => number) =>
    parts.reduce((sum, { mass, at, from, to }) => sum + mass * mix(of(from), of(to), at), 0) /
    share;
  return {
    x: weigh(({ x }) => x),
    y: weigh(({ y }) => y),
    share,
    // Marks are shared between parts, so their errors do not cancel: the sum is on the safe side.
    plusMinus: weigh(({ precision }) => precision),
  };
}

function partsOf(marks: ViewMarks): readonly Part[] {
  const hips = middle(markOf(marks, "left-hip"), markOf(marks, "right-hip"));
  const shoulders = middle(markOf(marks, "left-shoulder"), markOf(marks, "right-shoulder"));
  const head = markOf(marks, "head");
  const trunk: Part =
    shoulders === null
      ? { ...MASS.trunkFromNeck, ends: [markOf(marks, "neck"), hips] }
      : { ...MASS.trunkFromShoulders, ends: [shoulders, hips] };
  return [
    { ...MASS.head, ends: [head, head] },
    trunk,
    ...SIDES.flatMap((side) => limbsOf(marks, side)),
  ];
}

function limbsOf(marks: ViewMarks, side: Side): readonly Part[] {
  const wrist = markOf(marks, `${side}-wrist`);
  const elbow = markOf(marks, `${side}-elbow`);
  const knee = markOf(marks, `${side}-knee`);
  return [
    { ...MASS.upperArm, ends: [markOf(marks, `${side}-shoulder`), elbow] },
    { ...MASS.forearm, ends: [elbow, wrist] },
    { ...MASS.hand, ends: [wrist, wrist] },
    { ...MASS.thigh, ends: [markOf(marks, `${side}-hip`), knee] },
    { ...MASS.shank, ends: [knee, markOf(marks, `${side}-ankle`)] },
    { ...MASS.foot, ends: [markOf(marks, `${side}-heel`), markOf(marks, `${side}-toe`)] },
  ];
}

/** Between both, or the one that is marked. */
function middle(left: End | null, right: End | null): End | null {
  if (left === null || right === null) return left ?? right;
  return {
    x: (left.x + right.x) / 2,
    y: (left.y + right.y) / 2,
    precision: (left.precision + right.precision) / 2,
  };
}

function mix(from: number, to: number, share: number): number {
  return from + share * (to - from);
}
