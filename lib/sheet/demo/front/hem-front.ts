import type { Point } from "../../../geometry";
import { curve } from "../hand/curve";
import { add, between } from "../hand/vector";
import type { FrontFigure } from "./front-figure";

const HANGS = 0.28; // leg lengths under the hips

/** The hem by the page's left and right. */
export interface FrontHem {
  readonly left: Point;
  readonly right: Point;
  readonly line: readonly Point[];
  /** A point near the hem: a share of the way from left to right, and so far up. */
  at(share: number, up: number): Point;
}

/** The hem sways against the hips, tips with them, and makes room for the knees. */
export function frontHemOf({ joint, pose }: FrontFigure): FrontHem {
  const [, y, z] = pose.hips;
  const sway = -z * 0.45;
  const list = Math.tan(((pose.pelvis.roll ?? 0) * Math.PI) / 180) * 0.2; // down on his left, the page's right
  const knees = [joint("right-knee").x, joint("left-knee").x];
  const left = {
    x: Math.min(-z - 0.2, ...knees.map((x) => x - 0.135)) + sway,
    y: y - HANGS + list,
  };
  const right = {
    x: Math.max(-z + 0.2, ...knees.map((x) => x + 0.135)) + sway,
    y: y - HANGS - list,
  };
  const at = (share: number, up: number) => add(between(left, right, share), { x: 0, y: up });
  const line = curve([
    left,
    at(0.16, -0.028),
    at(0.36, -0.03),
    at(0.52, -0.042),
    at(0.7, -0.034),
    at(0.86, -0.034),
    right,
  ]);
  return { left, right, line, at };
}
