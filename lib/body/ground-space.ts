import type { Point } from "../geometry";
import { requireFinite, requirePositive } from "../require";
import { PANEL } from "./panel-space";

/**
 * The stretch of ground a panel looks at. `place` is the ground x of the panel's middle, in leg
 * lengths; `legLength` says how long a leg is on the paper, in panel units.
 */
export interface Stretch {
  readonly place: number;
  readonly legLength: number;
}

/** Seen from the walker's right side. Leg lengths: x the way he goes, y up from the ground. */
export interface SidePoint {
  readonly x: number;
  readonly y: number;
}

/** Seen from ahead of him. Leg lengths: z to the walker's right, y up from the ground. */
export interface FrontPoint {
  readonly z: number;
  readonly y: number;
}

/**
 * A side view's point on the ground. The walker goes to the page's right.
 *
 * Units:   panel units, y down → leg lengths, y up
 * Errors:  RangeError unless the leg length is above 0 and the place finite
 *
 * @example
 * sideToGround({ x: 780, y: 660 }, { place: 2, legLength: 420 }); // => { x: 3, y: 1 }
 */
export function sideToGround(point: Point, stretch: Stretch): SidePoint {
  requireStretch("sideToGround", stretch);
  const { place, legLength } = stretch;
  return {
    x: place + (point.x - PANEL.width / 2) / legLength,
    y: (PANEL.groundY - point.y) / legLength,
  };
}

/** The way back of `sideToGround`: leg lengths → panel units. */
export function groundToSide(point: SidePoint, stretch: Stretch): Point {
  requireStretch("groundToSide", stretch);
  const { place, legLength } = stretch;
  return {
    x: PANEL.width / 2 + (point.x - place) * legLength,
    y: PANEL.groundY - point.y * legLength,
  };
}

/**
 * A front view's point on the ground. He comes toward us, so his left is on the page's right:
 * page x runs against z.
 *
 * Units:   panel units, y down → leg lengths, y up
 * Errors:  RangeError unless the leg length is above 0
 *
 * @example
 * frontToGround({ x: 402, y: 1080 }, 420); // => { z: -0.1, y: 0 }
 */
export function frontToGround(point: Point, legLength: number): FrontPoint {
  requirePositive("frontToGround", { legLength });
  return {
    z: (PANEL.width / 2 - point.x) / legLength,
    y: (PANEL.groundY - point.y) / legLength,
  };
}

/** The way back of `frontToGround`: leg lengths → panel units. */
export function groundToFront(point: FrontPoint, legLength: number): Point {
  requirePositive("groundToFront", { legLength });
  return {
    x: PANEL.width / 2 - point.z * legLength,
    y: PANEL.groundY - point.y * legLength,
  };
}

function requireStretch(who: string, { place, legLength }: Stretch): void {
  requireFinite(who, { place });
  requirePositive(who, { legLength });
}
