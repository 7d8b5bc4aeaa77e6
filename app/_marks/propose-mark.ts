import { type JointName, type Mark, markOf } from "../../lib/body";
import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";
import { coarsest, legOn } from "./mark-precision";
import { onPaper } from "./on-paper";
import { standingPlace } from "./standing-place";

/**
 * Where a joint's mark may be put without a pointer, to be moved from there: where the panel nearest
 * in time has it, the earlier of two as near, else where a plain figure stands. Nobody has looked yet,
 * so it carries the coarsest precision a mark may have.
 *
 * Units:   panel units, y down
 */
export function proposeMark(
  panels: readonly Panel[],
  panel: Panel,
  view: View,
  joint: JointName,
): Mark {
  const neighbour = nearestMark(panels, panel, view, joint);
  return {
    ...onPaper(neighbour ?? standingPlace(joint, view)),
    precision: coarsest(legOn(panels)),
  };
}

function nearestMark(
  panels: readonly Panel[],
  { id, frame }: Panel,
  view: View,
  joint: JointName,
): Mark | null {
  let nearest: Mark | null = null;
  let apart = Number.POSITIVE_INFINITY; // frames
  for (const panel of panels) {
    const mark = panel.id === id ? null : markOf(panel.marks[view], joint);
    const frames = Math.abs(panel.frame - frame);
    if (mark === null || frames >= apart) continue;
    nearest = mark;
    apart = frames;
  }
  return nearest;
}
