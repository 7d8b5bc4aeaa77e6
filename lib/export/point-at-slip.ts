import { type JointName, limbJoint, markOf, PANEL, type Side } from "../body";
import type { Point } from "../geometry";
import type { Panel } from "../sheet";
import { drawArrow, labelRemark } from "./label-remark";
import type { RemarkDrawing } from "./remark-drawing";
import { tracePolygon } from "./shapes";
import type { Surface } from "./surface";

/**
 * Draws where the foot was put down, dashed, and an arrow from there to where it is now.
 *
 * Units:   panel units
 */
export function pointAtSlip(surface: Surface, drawing: RemarkDrawing): void {
  const { remark, panel, earlier, view, stretchOf, pixel, slot } = drawing;
  const joint = remark.spots.at(-1)?.joints[0];
  if (view !== "side" || remark.side === null || joint === undefined) return;
  const now = markOf(panel.marks.side, joint);
  const put = onGroundOf(earlier, panel, joint, stretchOf);
  if (now === null || put === null) return;
  surface.lineWidth = 1.5 * pixel;
  surface.setLineDash([4 * pixel, 3 * pixel]);
  const print = footprint(earlier, panel, remark.side, stretchOf);
  if (print !== null) {
    tracePolygon(surface, print);
    surface.stroke();
  }
  surface.setLineDash([]);
  const y = PANEL.groundY + (17 + 16 * slot) * pixel;
  drawArrow(surface, { x: put.x, y }, { x: now.x, y }, pixel);
  const [left, right] = [Math.min(put.x, now.x) - 7 * pixel, Math.max(put.x, now.x) + 5 * pixel];
  labelRemark(surface, drawing, { left, right, y: y + 4 * pixel });
}

/** Where an earlier panel's mark lies on a later panel's paper, since the ground went by. */
function onGroundOf(
  earlier: Panel,
  panel: Panel,
  joint: JointName,
  stretchOf: RemarkDrawing["stretchOf"],
): Point | null {
  const mark = markOf(earlier.marks.side, joint);
  if (mark === null) return null;
  const [then, now] = [stretchOf(earlier), stretchOf(panel)];
  return { x: mark.x + (then.place - now.place) * now.legLength, y: mark.y };
}

const SOLE = { height: 30, over: 12 }; // panel units: how high the outline is, how far it overhangs

function footprint(
  earlier: Panel,
  panel: Panel,
  side: Side,
  stretchOf: RemarkDrawing["stretchOf"],
): readonly Point[] | null {
  const heel = onGroundOf(earlier, panel, limbJoint(side, "heel"), stretchOf);
  const tip =
    onGroundOf(earlier, panel, limbJoint(side, "toe"), stretchOf) ??
    onGroundOf(earlier, panel, limbJoint(side, "ball"), stretchOf);
  if (heel === null || tip === null) return null;
  const [back, front] = [heel.x - SOLE.over, tip.x + SOLE.over];
  const sole = PANEL.groundY;
  const top = sole - SOLE.height;
  return [
    { x: back, y: sole },
    { x: back, y: top },
    { x: back + (front - back) * 0.55, y: top },
    { x: front, y: sole - SOLE.height * 0.35 },
    { x: front, y: sole },
  ];
}
