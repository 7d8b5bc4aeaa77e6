import { type JointName, limbJoint, PANEL, type Side } from "../../body";
import type { Point } from "../../geometry";
import { bearingFeet } from "../foot";
import type { WalkPanel } from "../walk";

/**
 * A mark this near to the ground line was meant for it, where that part of the foot bears. A share of a
 * leg: our own choice, as far as the coarsest mark may be off; a swinging foot is not asked,
 * and one that is drawn to float stands higher than that (it shows from 2 % on beyond its ±).
 */
export const SNAPS_WITHIN = 0.03;

/** What a snap is asked about: whose foot bears in this pose. */
export type Bearing = Pick<WalkPanel, "pose" | "weightOn"> & { readonly joint: JointName };

/**
 * A mark on the ground line where it is near it and the pose says that this part of the foot bears: of
 * the foot that lands at a contact the heel, of the one behind ball and toe; at the down and the passing
 * heel, ball and toe of the foot that carries; at the up its ball and toe, since its heel may be up; on the
 * stand all of both. Any other mark stays where it is.
 *
 * Units:   panel units, y down; `legUnits` is a leg on the paper
 *
 * @example
 * const landing = { pose: "contact", weightOn: "left", joint: "left-heel" } as const;
 * snapToGround({ x: 400, y: 1074 }, landing, 420); // => { x: 400, y: 1080 }
 */
export function snapToGround(point: Point, bearing: Bearing, legUnits: number): Point {
  const near = Math.abs(PANEL.groundY - point.y) <= SNAPS_WITHIN * legUnits;
  return near && bears(bearing) ? { x: point.x, y: PANEL.groundY } : point;
}

function bears({ pose, weightOn, joint }: Bearing): boolean {
  const feet = bearingFeet({ pose, weightOn });
  return (feet ?? []).some((side) => partsDown({ pose, weightOn }, side).includes(joint));
}

function partsDown({ pose, weightOn }: Omit<Bearing, "joint">, side: Side): JointName[] {
  const [heel, ...front] = [
    limbJoint(side, "heel"),
    limbJoint(side, "ball"),
    limbJoint(side, "toe"),
  ] as const;
  if (pose === "contact" && weightOn !== null) return side === weightOn ? [heel] : front;
  return pose === "up" ? front : [heel, ...front];
}
