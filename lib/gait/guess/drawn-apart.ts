import {
  JOINTS,
  type JointName,
  markOf,
  type PoseMarks,
  partnerOf,
  shiftedMarks,
} from "../../body";
import type { Point, View } from "../../geometry";
import { placedIn } from "../figure/placed-figure";
import { printOn } from "../figure/print-on";
import type { Sized } from "../figure/sized";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/** How far a joint was drawn from where the published figure has it. Panel units, y down. */
export type DrawnApart = (view: View, joint: JointName) => Point | null;

/**
 * How a marked pose differs from the published figure of its size, joint by joint: that is what makes the
 * walk this character's, and what the next pose will most likely have as well. The figure is laid on
 * the pose's own planted foot, so that where it stands on the ground does not count.
 */
export function drawnApart(study: Study, panel: WalkPanel, sized: Sized): DrawnApart | null {
  const figure = figureOn(study, panel, sized);
  if (figure === null) return null;
  return (view, joint) => {
    const drawn = markOf(panel.marks[view], joint);
    const placed = markOf(figure[view], joint);
    return drawn === null || placed === null
      ? null
      : { x: drawn.x - placed.x, y: drawn.y - placed.y };
  };
}

/** The same of the other step: left and right exchanged, from ahead left and right turned as well. */
export function mirroredApart(apart: DrawnApart): DrawnApart {
  return (view, joint) => {
    const way = apart(view, partnerOf(joint));
    return way === null || view === "side" ? way : { x: -way.x, y: way.y };
  };
}

/** The published figure, its carrying foot where the panel's own is. */
export function figureOn(study: Study, panel: WalkPanel, sized: Sized): PoseMarks | null {
  const placed = placedIn(study, panel, sized, "frame");
  if (placed.kind !== "figure") return null;
  const { side, front } = placed.marks;
  if (panel.weightOn === null) return placed.marks;
  const drawn = printOn(panel.marks.side, panel, panel.weightOn, sized);
  const made = printOn(side, panel, panel.weightOn, sized);
  if (drawn === null || made === null) return placed.marks;
  return { side: shiftedMarks(side, JOINTS, { x: drawn - made, y: 0 }), front };
}
