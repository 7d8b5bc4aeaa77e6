import { type JointName, markOf, PANEL, type ViewMarks } from "../../lib/body";
import type { Point } from "../../lib/geometry";

/** Where a figure's joints are in a picture. Units: those of the picture, y down. */
export type Spots = (joint: JointName) => Point;

/** Where a figure is put: its paper's middle, the ground line, and picture units per panel unit. */
export interface Stage {
  readonly at: number;
  readonly ground: number;
  readonly scale: number;
}

/** Puts a pose's marks into a picture. A joint that is not marked stands where the paper's middle meets the ground. */
export function spotsOf(marks: ViewMarks, { at, ground, scale }: Stage): Spots {
  return (joint) => {
    const mark = markOf(marks, joint);
    if (mark === null) return { x: at, y: ground };
    return {
      x: at + (mark.x - PANEL.width / 2) * scale,
      y: ground + (mark.y - PANEL.groundY) * scale,
    };
  };
}

/** The same figure with some of its joints elsewhere. Units: picture units. */
export function moved(spots: Spots, joints: readonly JointName[], { x, y }: Point): Spots {
  return (joint) => {
    const spot = spots(joint);
    return joints.includes(joint) ? { x: spot.x + x, y: spot.y + y } : spot;
  };
}
