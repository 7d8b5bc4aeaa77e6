import type { Point } from "../../../geometry";
import { lengthOf, sub } from "./vector";

/** Leg lengths between the samples of a curve: fine enough to be cut where something hides it. */
const STEP = 0.007;
/** Two knots nearer than this are one. */
const SAME = 1e-6;

/**
 * A smooth curve through knots, sampled evenly enough. Centripetal, so that near knots make no loops.
 *
 * Units:   leg lengths
 * Source:  Catmull & Rom (1974), A class of local interpolating splines; centripetal parameter as in
 *          Yuksel, Schaefer & Keyser (2011), doi 10.1016/j.cad.2010.08.008
 */
export function curve(knots: readonly Point[], closed = false): Point[] {
  const path = apart(knots, closed);
  const first = path[0];
  if (first === undefined) return [];
  const spans = closed ? path.length : path.length - 1;
  const points = Array.from({ length: spans }, (_, i) => span(path, i, closed)).flat();
  const last = closed ? first : (path.at(-1) ?? first);
  return [...points, last];
}

function apart(knots: readonly Point[], closed: boolean): Point[] {
  const path = knots.filter((knot, i) => {
    const before = knots[i - 1];
    return before === undefined || lengthOf(sub(knot, before)) > SAME;
  });
  const [first, last] = [path[0], path.at(-1)];
  const meets = first !== undefined && last !== undefined && lengthOf(sub(first, last)) <= SAME;
  return closed && meets ? path.slice(0, -1) : path;
}

function span(path: readonly Point[], i: number, closed: boolean): Point[] {
  const n = path.length;
  const b = path[i % n];
  const c = path[(i + 1) % n];
  if (b === undefined || c === undefined) return [];
  const beyond = (from: Point, to: Point): Point => ({
    x: 2 * to.x - from.x,
    y: 2 * to.y - from.y,
  });
  const a = (closed ? path[(i - 1 + n) % n] : path[i - 1]) ?? beyond(c, b);
  const d = (closed ? path[(i + 2) % n] : path[i + 2]) ?? beyond(b, c);
  const samples = Math.max(1, Math.ceil(lengthOf(sub(c, b)) / STEP));
  return Array.from({ length: samples }, (_, k) => onCurve([a, b, c, d], k / samples));
}

/** Where the curve is between its two middle knots, by Barry and Goldman's pyramid. */
function onCurve([a, b, c, d]: readonly [Point, Point, Point, Point], share: number): Point {
  const t1 = knotGap(a, b);
  const t2 = t1 + knotGap(b, c);
  const t3 = t2 + knotGap(c, d);
  const t = t1 + (t2 - t1) * share;
  const mix = (p: Point, q: Point, from: number, to: number): Point => {
    const k = (t - from) / (to - from);
    return { x: p.x + (q.x - p.x) * k, y: p.y + (q.y - p.y) * k };
  };
  const ab = mix(a, b, 0, t1);
  const bc = mix(b, c, t1, t2);
  const cd = mix(c, d, t2, t3);
  return mix(mix(ab, bc, 0, t2), mix(bc, cd, t1, t3), t1, t2);
}

function knotGap(a: Point, b: Point): number {
  return Math.max(SAME, Math.sqrt(lengthOf(sub(b, a))));
}
