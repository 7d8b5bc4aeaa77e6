import type { Side } from "../../body";
import { type FootNode, type FootSpan, footSpan } from "./foot-nodes";
import { type FootPart, type FootPoints, shapeBetween } from "./foot-shape";
import {
  hermite,
  type Knot,
  monotoneSlope,
  parabolaSlope,
  type SlopeOf,
  type Told,
} from "./hermite";
import { mixedPoint } from "./mix";
import { type Neighbours, steadied } from "./neighbours";
import { rolledFoot, shiftedFoot, turnedFoot } from "./rolling";

/** A foot from one pose to the next, at any moment. */
export interface FootTrack {
  readonly parts: readonly FootPart[];
  /** Whether it stands on one footprint from the one pose to the other. */
  readonly stays: boolean;
  /** Whether it stands on the ground then. */
  stands(at: number): boolean;
  /** Where it is; while it stands, turned over its sole by so much more than it would be. Radians. */
  at(moment: number, turn?: number): FootPoints;
  /** Its pitch: radians, toe up positive. */
  pitch(moment: number): number;
}

/**
 * A foot between two poses. While it stands it is rolled over its footprint, heel, flat, ball, toe; where
 * both poses have it on one footprint that are a little apart, it goes the way evenly. From the moment
 * that its toe leaves it swings: what carries it, the ankle as a rule, on a smooth path, turned smoothly,
 * until it is put down without speed.
 *
 * Errors:  null where the two poses have no part of the foot in common
 */
export function footTrack(around: Neighbours, side: Side): FootTrack | null {
  const { before, from, to, after } = around;
  const span = footSpan(from, to, side);
  if (span === null) return null;
  const past = before === null ? null : footSpan(before, from, side);
  const next = after === null ? null : footSpan(to, after, side);
  const { knots, first } = knotsOf(span, past, next);
  const share = (at: number) => (at - from.until) / (to.frame - from.until);
  const stands = (at: number) => span.stays || at <= span.leaves || at >= span.lands;
  const knotsAt = (moment: number) => {
    const nth = knotBefore(knots, first, span.nodes.length, moment);
    return [knots[nth], knots[nth + 1]] as const;
  };
  const pitch = (moment: number) => {
    const [a, b] = knotsAt(moment);
    return a === undefined || b === undefined ? 0 : hermite(a.pitch, b.pitch, moment);
  };
  return {
    parts: span.frame.parts,
    stays: span.stays,
    stands,
    pitch,
    at(moment, turn = 0) {
      const local = shapeBetween(span.shapes[0], span.shapes[1], share(moment));
      if (stands(moment)) {
        const moved = span.stays ? share(moment) : Number(moment >= span.lands);
        const print = mixedPoint(span.prints[0], span.prints[1], moved);
        return rolledFoot(local, pitch(moment) + turn, print);
      }
      const [a, b] = knotsAt(moment);
      const turned = turnedFoot(local, pitch(moment));
      const carrier = turned[span.frame.carrier];
      if (a === undefined || b === undefined || carrier === undefined) return {};
      return shiftedFoot(turned, {
        x: hermite(a.x, b.x, moment) - carrier.x,
        y: hermite(a.y, b.y, moment) - carrier.y,
      });
    },
  };
}

interface FootKnot {
  readonly at: number;
  readonly pitch: Knot;
  readonly x: Knot;
  readonly y: Knot;
}

/** The span's own nodes as knots, with slopes by those around them; `first` is where its own begin. */
function knotsOf(span: FootSpan, past: FootSpan | null, next: FootSpan | null) {
  const before = alike(span, past)?.nodes.slice(0, -1) ?? [];
  const after = alike(span, next)?.nodes.slice(1) ?? [];
  const turned = (by: number) => (node: FootNode) => ({ ...node, pitch: node.pitch + by });
  const nodes = [
    ...before.map(turned(pitchOf(span, 0) - pitchOf(past, -1))),
    ...span.nodes,
    ...after.map(turned(pitchOf(span, -1) - pitchOf(next, 0))),
  ];
  const knots = nodes.map((node, at): FootKnot => {
    const knot = (get: (one: FootNode) => number, slopeOf: SlopeOf): Knot => {
      const here = told(node, get);
      const [behind, back, ahead, beyond] = [at - 2, at - 1, at + 1, at + 2].map((nth) =>
        told(nodes[nth] ?? null, get),
      ) as [Told | null, Told | null, Told | null, Told | null];
      const past = steadied([back, behind], here, ahead);
      const next = steadied([ahead, beyond], here, back);
      return { ...here, slope: slopeOf(past, here, next) };
    };
    return {
      at: node.at,
      // On the ground it never turns beyond its poses: the leg would not reach, and the hips would sink.
      pitch: knot(({ pitch }) => pitch, node.stood ? monotoneSlope : parabolaSlope),
      x: knot(({ carrier }) => carrier.x, node.lands ? still : parabolaSlope),
      y: knot(({ carrier }) => carrier.y, node.lands ? still : parabolaSlope),
    };
  });
  return { knots, first: before.length };
}

const still: SlopeOf = () => 0;

/** A span beside this one, where it tells of the same points of the foot. */
function alike(span: FootSpan, other: FootSpan | null): FootSpan | null {
  const same =
    other !== null &&
    other.frame.carrier === span.frame.carrier &&
    (other.frame.line === null) === (span.frame.line === null);
  return same ? other : null;
}

function pitchOf(span: FootSpan | null, nth: number): number {
  return span?.nodes.at(nth)?.pitch ?? 0;
}

function told(node: FootNode, get: (one: FootNode) => number): Told;
function told(node: FootNode | null, get: (one: FootNode) => number): Told | null;
function told(node: FootNode | null, get: (one: FootNode) => number): Told | null {
  return node === null ? null : { at: node.at, value: get(node) };
}

function knotBefore(
  knots: readonly FootKnot[],
  first: number,
  count: number,
  moment: number,
): number {
  let nth = first;
  while (nth < first + count - 2 && (knots[nth + 1]?.at ?? moment) <= moment) nth += 1;
  return nth;
}
