import type { Point } from "../geometry";
import type { InkPoint, Stroke } from "./stroke";

const STEP = 2; // panel units: how closely the line between two points is looked at
const LEAST_PIECE = 1; // panel units; what is shorter is a crumb that nobody drew

/**
 * The pieces of a stroke that lie where they may stay. Where the line crosses the border a point is
 * made on it; all others are the stroke's own.
 *
 * Units:   panel units
 * @returns pieces in drawing order; the stroke itself when nothing of it goes
 */
export function cutStroke<S extends Pick<Stroke, "points">>(
  stroke: S,
  stays: (point: Point) => boolean,
): readonly S[] {
  const pieces: InkPoint[][] = [];
  let piece: InkPoint[] = [];
  let border: InkPoint | null = null; // the last place that stays, between two points
  let whole = true;
  const end = (): void => {
    if (border !== null) piece.push(border);
    if (lengthOf(piece) >= LEAST_PIECE) pieces.push(piece);
    piece = [];
    border = null;
  };
  let last: InkPoint | undefined;
  for (const point of stroke.points) {
    for (const step of stepsTo(last ?? point, point)) {
      if (!stays({ x: step[0], y: step[1] })) {
        whole = false;
        end();
      } else if (step === point || piece.length === 0) {
        piece.push(step);
        border = null;
      } else {
        border = step;
      }
    }
    last = point;
  }
  end();
  return whole ? [stroke] : pieces.map((points) => ({ ...stroke, points }));
}

/** Places on the way to a point, the point itself last. */
function* stepsTo(from: InkPoint, to: InkPoint): Generator<InkPoint> {
  const steps = Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / STEP);
  for (let n = 1; n < steps; n++) {
    const share = n / steps;
    const at = (axis: 0 | 1 | 2) => from[axis] + (to[axis] - from[axis]) * share;
    yield [at(0), at(1), at(2)];
  }
  yield to;
}

function lengthOf(points: readonly InkPoint[]): number {
  let length = 0;
  for (const [n, [x, y]] of points.entries()) {
    const last = points[n - 1];
    if (last !== undefined) length += Math.hypot(x - last[0], y - last[1]);
  }
  return length;
}
