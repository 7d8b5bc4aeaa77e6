import type { Point } from "../../../geometry";
import { curve } from "./curve";
import { across, add, between, sub, times, unit } from "./vector";

/** Where along a limb of two bones (0..1 the first, 1..2 the second), and how far out on each side. */
export type Station = readonly [along: number, front: number, back: number];

/** Root, middle and end of a limb, as they are seen. */
export type LimbJoints = readonly [root: Point, middle: Point, end: Point];

/** Both outlines of a limb from its root to its end. Leg lengths. */
export interface LimbLines {
  readonly front: readonly Point[];
  readonly back: readonly Point[];
}

/** Half the stretch about the joint over which the limb turns from one bone's way to the other's. */
const ROUNDING = 0.3;

/**
 * The outlines of a limb over its three joints. `front` lies to the left of the way from the
 * root, `back` to the right. The way turns smoothly about the middle joint, so that sleeves do not kink.
 */
export function limbLines(joints: LimbJoints, stations: readonly Station[]): LimbLines {
  const side = (k: 1 | 2, sign: number) =>
    curve(
      stations.map((station) => {
        const { point, normal } = alongLimb(joints, station[0]);
        return add(point, times(normal, sign * station[k]));
      }),
    );
  return { front: side(1, 1), back: side(2, -1) };
}

/** The outline that a limb hides what is behind it with. */
export function limbOutline({ front, back }: LimbLines): Point[] {
  return [...front, ...back.toReversed()];
}

/** A point on the limb's axis, and the way that is left of it. */
export function alongLimb([a, b, c]: LimbJoints, along: number) {
  const upper = unit(sub(b, a));
  const lower = unit(sub(c, b));
  const turn = Math.min(1, Math.max(0, (along - 1 + ROUNDING) / (2 * ROUNDING)));
  const normal = across(unit(between(upper, lower, turn)));
  const point = along <= 1 ? between(a, b, along) : between(b, c, along - 1);
  return { point, normal };
}
