import { type JointName, limbJoint, markOf, PANEL, type Side, type Stretch } from "../body";
import type { CheckId, Remark } from "../gait";
import type { Point, View } from "../geometry";
import type { Panel } from "../sheet";
import { hipsMiddle } from "./draw-panel";
import { levelColour } from "./palette";
import { type Box, traceArrowHead, traceLine, tracePolygon } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";

/** A remark pointed at on the drawing where it is seen. */
export interface RemarkDrawing {
  readonly remark: Remark;
  /** The number the page knows the remark by; left out on screen. */
  readonly key?: number;
  readonly panel: Panel;
  readonly view: View;
  /** The earlier panel that the remark compares with. */
  readonly earlier: Panel;
  readonly stretchOf: (panel: Panel) => Stretch;
  readonly window: Box;
  readonly pixel: number;
}

/**
 * Points at a remark on the drawing: a slip by the dashed footprint and an arrow from it, a hip
 * height by the other pose's line and the gap between. What belongs to the ruler (gaps) is shown
 * there. Checks without a pointer of their own draw nothing here.
 *
 * Units:   panel units; `pixel` of them are one pixel of the result
 */
export function drawRemark(surface: Surface, drawing: RemarkDrawing): void {
  const pointer = POINTERS[drawing.remark.check];
  if (pointer === null) return;
  surface.save();
  surface.strokeStyle = levelColour(drawing.remark.level);
  surface.fillStyle = levelColour(drawing.remark.level);
  surface.lineCap = "round";
  pointer(surface, drawing);
  surface.restore();
}

type Pointer = (surface: Surface, drawing: RemarkDrawing) => void;

const POINTERS: Readonly<Record<CheckId, Pointer | null>> = {
  slide: pointAtSlip,
  "hip-order": pointAtHips,
  gaps: null,
};

const LABEL_PX = 13;

function pointAtSlip(surface: Surface, drawing: RemarkDrawing): void {
  const { remark, panel, earlier, view, stretchOf, pixel } = drawing;
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
  const y = PANEL.groundY + 17 * pixel;
  arrow(surface, { x: put.x, y }, { x: now.x, y }, pixel);
  label(surface, drawing, { x: Math.max(put.x, now.x) + 5 * pixel, y: y + 4 * pixel });
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

function pointAtHips(surface: Surface, drawing: RemarkDrawing): void {
  const { remark, panel, earlier, view, window, pixel } = drawing;
  if (remark.spots.at(-1)?.view !== view) return;
  const here = hipsMiddle(panel.marks[view]);
  const there = hipsMiddle(earlier.marks[view]);
  if (here === null || there === null) return;
  const right = window.x + window.width;
  surface.lineWidth = 1.5 * pixel;
  surface.setLineDash([6 * pixel, 4 * pixel]);
  traceLine(surface, [
    { x: window.x + 6 * pixel, y: there.y },
    { x: right - 6 * pixel, y: there.y },
  ]);
  surface.stroke();
  surface.setLineDash([]);
  const x = right - 12 * pixel;
  arrow(surface, { x, y: there.y }, { x, y: here.y }, pixel);
  const below = here.y > there.y;
  label(surface, drawing, { x, y: here.y + (below ? 18 : -9) * pixel });
}

const MIN_SHAFT_PX = 9; // a shorter arrow is all head

function arrow(surface: Surface, from: Point, to: Point, pixel: number): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const head = Math.min(7 * pixel, Math.max(3 * pixel, length * 0.6));
  if (length > MIN_SHAFT_PX * pixel) {
    surface.lineWidth = 1.8 * pixel;
    traceLine(surface, [from, to]);
    surface.stroke();
  }
  traceArrowHead(surface, from, to, head);
  surface.fill();
}

/** The remark's number and how much it is, kept inside the view. */
function label(surface: Surface, { remark, key, window, pixel }: RemarkDrawing, at: Point): void {
  const amount = `${Math.abs(100 * remark.measured.value).toFixed(1)} %`;
  const text = key === undefined ? amount : `${key}: ${amount}`;
  const room = text.length * LABEL_PX * 0.62 * pixel;
  const overflows = at.x + room > window.x + window.width;
  drawText(surface, {
    text,
    x: overflows ? window.x + window.width - 6 * pixel : at.x,
    y: at.y,
    face: { size: LABEL_PX * pixel, weight: 700 },
    colour: levelColour(remark.level),
    align: overflows ? "right" : "left",
  });
}
