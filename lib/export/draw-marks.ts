import {
  bonesOf,
  JOINTS,
  type JointName,
  type Mark,
  markOf,
  type Side,
  type ViewMarks,
} from "../body";
import type { Point } from "../geometry";
import { PALETTE, sideColour } from "./palette";
import { traceCircle, traceDiamond, traceLine, traceSquare } from "./shapes";
import type { Surface } from "./surface";

const MARK_RADIUS_PX = 4;
const RIM_PX = 1.6;
const BONE_PX = 1.1;
const BOLD_BONE_PX = 2.6;
const RIGHT_DASH_PX = [7, 3]; // so that the sides differ without colour, too

/**
 * Draws the marks of one view: left round, right diamond, neither square, each hollow so that the
 * drawing shows through, with the limbs as thin lines between them.
 *
 * Units:   panel units; `pixel` is how many of them one screen pixel is, so that marks keep their
 *          size at every zoom
 * @param alone whether there is no drawing under the marks: then the limbs are the figure, and bold
 */
export function drawMarks(surface: Surface, marks: ViewMarks, pixel: number, alone = false): void {
  drawLimbs(surface, marks, pixel, alone);
  for (const joint of JOINTS) {
    const mark = markOf(marks, joint);
    if (mark !== null) drawMark(surface, joint, mark, pixel);
  }
}

/** Draws the limb lines alone. Units: as `drawMarks`. */
export function drawLimbs(surface: Surface, marks: ViewMarks, pixel: number, alone = false): void {
  surface.save();
  surface.lineCap = "round";
  surface.lineWidth = (alone ? BOLD_BONE_PX : BONE_PX) * pixel;
  surface.globalAlpha = alone ? 0.9 : 0.75; // the drawing stays the louder, and a grey copy keeps 3 : 1
  for (const { start, end, side } of bonesOf(marks)) {
    surface.strokeStyle = sideColour(side);
    surface.setLineDash(side === "right" ? RIGHT_DASH_PX.map((length) => length * pixel) : []);
    traceLine(surface, [start, end]);
    surface.stroke();
  }
  surface.restore();
}

/** Draws one joint's mark. Units: as `drawMarks`. */
export function drawMark(surface: Surface, joint: JointName, mark: Mark, pixel: number): void {
  const side = sideOf(joint);
  surface.save();
  surface.setLineDash([]);
  traceSide(surface, side, mark, MARK_RADIUS_PX * pixel);
  surface.fillStyle = PALETTE.paper;
  surface.fill();
  surface.strokeStyle = sideColour(side);
  surface.lineWidth = RIM_PX * pixel;
  surface.stroke();
  surface.restore();
}

/** Begins the shape that stands for a side: left round, right diamond, neither square. */
export function traceSide(surface: Surface, side: Side | null, at: Point, radius: number): void {
  if (side === "left") traceCircle(surface, at, radius);
  else if (side === "right") traceDiamond(surface, at, radius * 1.3);
  else traceSquare(surface, at, radius * 0.85);
}

/** Whose a joint is; null where it belongs to neither. */
export function sideOf(joint: JointName): Side | null {
  if (joint.startsWith("left-")) return "left";
  return joint.startsWith("right-") ? "right" : null;
}
