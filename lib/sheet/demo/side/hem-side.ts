import { SIDES } from "../../../body";
import type { Point } from "../../../geometry";
import { curve } from "../hand/curve";
import { add, between } from "../hand/vector";
import type { SideFigure } from "./side-figure";

/** How far the hem hangs under the hips, leg lengths. */
const HANGS = 0.29;

export interface Hem {
  readonly front: Point;
  readonly back: Point;
  readonly line: readonly Point[];
  /** A point near the hem: a share of the way from back to front, and so far up. */
  at(share: number, up: number): Point;
}

/** The hem is pushed by the thigh that is ahead, dragged by the one behind, and comes a little late. */
export function hemOf(figure: SideFigure): Hem {
  const { hips } = figure;
  const [dragFront, dragBack] = figure.pose.drag.hem;
  const middle = hips(0, 0).x;
  const thighs = SIDES.map(
    (side) => between(figure.of(side, "hip"), figure.of(side, "knee"), 0.6).x - middle,
  );
  const ahead = Math.max(0.08, ...thighs);
  const behind = Math.min(-0.07, ...thighs);
  const front = hips(ahead + 0.115 + dragFront, -HANGS + Math.max(0, ahead - 0.1) * 0.32);
  const back = hips(behind - 0.125 + dragBack, -HANGS + Math.max(0, -behind - 0.1) * 0.3 + 0.012);
  const at = (share: number, up: number) => add(between(back, front, share), { x: 0, y: up });
  const line = curve([
    back,
    at(0.16, -0.024),
    at(0.34, -0.012),
    at(0.55, -0.036),
    at(0.76, -0.022),
    at(0.9, -0.022),
    front,
  ]);
  return { front, back, line, at };
}
