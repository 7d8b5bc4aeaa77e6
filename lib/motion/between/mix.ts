import type { SidePoint } from "../../body";

/** A value on the straight way from one to another: 0 is the one, 1 the other. */
export function mix(from: number, to: number, share: number): number {
  return from + share * (to - from);
}

export function mixedPoint(from: SidePoint, to: SidePoint, share: number): SidePoint {
  return { x: mix(from.x, to.x, share), y: mix(from.y, to.y, share) };
}
