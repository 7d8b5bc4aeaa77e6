import type { Point } from "../geometry";
import { requireFinite, requirePositive } from "../require";
import type { InkPoint, Stroke } from "./stroke";

/** How strokes are moved, turned and scaled: about a point, then by a way. */
export interface Shaping {
  /** What stays where it is while the strokes turn and grow. Panel units. */
  readonly about: Point;
  /** 1 keeps the size; above 0. */
  readonly scale: number;
  /** Radians, clockwise on the page (y down). */
  readonly turn: number;
  /** Panel units. */
  readonly by: Point;
}

/** The shaping that leaves everything as it is. */
export const UNSHAPED: Shaping = { about: { x: 0, y: 0 }, scale: 1, turn: 0, by: { x: 0, y: 0 } };

/** Where a point goes. Units: panel units, y down. */
export function shapePoint({ x, y }: Point, { about, scale, turn, by }: Shaping): Point {
  const cos = scale * Math.cos(turn);
  const sin = scale * Math.sin(turn);
  return {
    x: about.x + (x - about.x) * cos - (y - about.y) * sin + by.x,
    y: about.y + (x - about.x) * sin + (y - about.y) * cos + by.y,
  };
}

/**
 * A stroke moved, turned and scaled; its width is scaled with it.
 *
 * Units:   panel units, y down
 * Errors:  RangeError unless all numbers are finite and the scale above 0
 *
 * @example
 * shapePoint({ x: 2, y: 0 }, { about: { x: 1, y: 0 }, scale: 2, turn: 0, by: { x: 0, y: 5 } }); // => { x: 3, y: 5 }
 */
export function shapeStroke<S extends Pick<Stroke, "points" | "width">>(
  stroke: S,
  shaping: Shaping,
): S {
  const { about, scale, turn, by } = shaping;
  requirePositive("shapeStroke", { scale });
  requireFinite("shapeStroke", { turn, x: by.x, y: by.y, aboutX: about.x, aboutY: about.y });
  const points = stroke.points.map(([x, y, pressure]): InkPoint => {
    const at = shapePoint({ x, y }, shaping);
    return [at.x, at.y, pressure];
  });
  return { ...stroke, width: stroke.width * scale, points };
}
