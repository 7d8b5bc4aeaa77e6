import type { Point } from "../../../geometry";

/** Sums on points of the drawing's plane. Units: leg lengths, y up, unless a caller says otherwise. */

export function add(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

export function sub(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

export function times(a: Point, k: number): Point {
  return { x: a.x * k, y: a.y * k };
}

export function between(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

export function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

export function lengthOf(a: Point): number {
  return Math.hypot(a.x, a.y);
}

/** The same way, one leg long; a point without a way keeps to the ground. */
export function unit(a: Point): Point {
  const length = lengthOf(a);
  return length === 0 ? { x: 1, y: 0 } : times(a, 1 / length);
}

/** A quarter turn to the left. */
export function across(a: Point): Point {
  return { x: -a.y, y: a.x };
}

export function turned(a: Point, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: a.x * c - a.y * s, y: a.x * s + a.y * c };
}
