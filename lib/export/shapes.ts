import type { Point } from "../geometry";
import type { Surface } from "./surface";

/**
 * Shapes that a font may lack, as paths. Each begins a path and leaves it to the caller to fill or
 * stroke. Units: the surface's.
 */

// A quarter circle as one cubic: handles of 4/3 (√2 − 1) radii miss the arc by 0.03 %.
const QUARTER = (4 / 3) * (Math.SQRT2 - 1);

export function traceCircle(surface: Surface, { x, y }: Point, radius: number): void {
  const k = QUARTER * radius;
  surface.beginPath();
  surface.moveTo(x + radius, y);
  surface.bezierCurveTo(x + radius, y + k, x + k, y + radius, x, y + radius);
  surface.bezierCurveTo(x - k, y + radius, x - radius, y + k, x - radius, y);
  surface.bezierCurveTo(x - radius, y - k, x - k, y - radius, x, y - radius);
  surface.bezierCurveTo(x + k, y - radius, x + radius, y - k, x + radius, y);
  surface.closePath();
}

export function tracePolygon(surface: Surface, points: readonly Point[]): void {
  traceLine(surface, points);
  surface.closePath();
}

export function traceLine(surface: Surface, points: readonly Point[]): void {
  surface.beginPath();
  points.forEach(({ x, y }, index) => {
    if (index === 0) surface.moveTo(x, y);
    else surface.lineTo(x, y);
  });
}

export function traceDiamond(surface: Surface, { x, y }: Point, radius: number): void {
  tracePolygon(surface, [
    { x: x + radius, y },
    { x, y: y + radius },
    { x: x - radius, y },
    { x, y: y - radius },
  ]);
}

export function traceSquare(surface: Surface, { x, y }: Point, half: number): void {
  traceBox(surface, { x: x - half, y: y - half, width: 2 * half, height: 2 * half });
}

/** An upright triangle with its middle of height at the point. */
export function traceTriangle(surface: Surface, { x, y }: Point, radius: number): void {
  tracePolygon(surface, [
    { x, y: y - radius },
    { x: x + radius * 1.1, y: y + radius * 0.9 },
    { x: x - radius * 1.1, y: y + radius * 0.9 },
  ]);
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function traceBox(surface: Surface, { x, y, width, height }: Box, corner = 0): void {
  if (corner === 0) {
    tracePolygon(surface, [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ]);
    return;
  }
  const [right, bottom] = [x + width, y + height];
  surface.beginPath();
  surface.moveTo(x + corner, y);
  surface.lineTo(right - corner, y);
  surface.quadraticCurveTo(right, y, right, y + corner);
  surface.lineTo(right, bottom - corner);
  surface.quadraticCurveTo(right, bottom, right - corner, bottom);
  surface.lineTo(x + corner, bottom);
  surface.quadraticCurveTo(x, bottom, x, bottom - corner);
  surface.lineTo(x, y + corner);
  surface.quadraticCurveTo(x, y, x + corner, y);
  surface.closePath();
}

/** The head of an arrow whose tip is at `to`, coming from `from`. */
export function traceArrowHead(surface: Surface, from: Point, to: Point, size: number): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const foot = { x: to.x - along.x * size, y: to.y - along.y * size };
  const half = size * 0.5;
  tracePolygon(surface, [
    to,
    { x: foot.x - along.y * half, y: foot.y + along.x * half },
    { x: foot.x + along.y * half, y: foot.y - along.x * half },
  ]);
}
