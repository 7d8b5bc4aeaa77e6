import { bonesOf } from "../../lib/body";
import type { View } from "../../lib/geometry";
import type { Stroke } from "../../lib/ink";
import type { InkStroke } from "../../lib/sheet";
import { type BitmapSize, contextOf, extraWidth, middlePath, strokePath } from "../_paper";
import type { OnionNeighbour } from "./onion-neighbours";

/**
 * Before and after differ twice: what came before is a solid violet-grey line, what comes after a
 * dashed green-grey one. Both are far paler than ink, and paler still with distance.
 */
const LOOKS = {
  before: { colour: "#6d5a86", alpha: 0.36, dashPx: [] },
  after: { colour: "#3f7350", alpha: 0.5, dashPx: [5, 4] },
} as const;

const FADE_WITH_DISTANCE = 0.6;
const STROKES_A_PIECE = 24;
const LIMB_PX = 1.6;

/** Paints the neighbours of a panel, a piece a turn (see `paintQueue`). */
export function* paintOnion(
  canvas: HTMLCanvasElement,
  neighbours: readonly OnionNeighbour[],
  view: View,
  size: BitmapSize,
): Generator<void, void> {
  const beside = document.createElement("canvas");
  beside.width = size.width;
  beside.height = size.height;
  const context = contextOf(beside);
  context.scale(size.scale, size.scale);
  context.lineCap = "round";
  context.lineJoin = "round";
  for (const neighbour of neighbours) yield* paintNeighbour(context, neighbour, view, size.scale);
  canvas.width = size.width;
  canvas.height = size.height;
  contextOf(canvas).drawImage(beside, 0, 0);
}

function* paintNeighbour(
  context: CanvasRenderingContext2D,
  { panel, when, distance }: OnionNeighbour,
  view: View,
  scale: number,
): Generator<void, void> {
  const { colour, alpha, dashPx } = LOOKS[when];
  const px = devicePixelRatio / scale;
  context.globalAlpha = alpha * FADE_WITH_DISTANCE ** (distance - 1);
  context.fillStyle = colour;
  context.strokeStyle = colour;
  context.setLineDash(dashPx.map((length) => length * px));
  for (const [index, stroke] of linesOf(panel.ink[view]).entries()) {
    if (when === "before") paintSolid(context, stroke, scale);
    else paintDashed(context, stroke, scale);
    if (index % STROKES_A_PIECE === STROKES_A_PIECE - 1) yield;
  }
  if (panel.ink[view].length > 0) return;
  // A panel with marks alone is seen by its limbs.
  context.lineWidth = LIMB_PX * px;
  context.beginPath();
  for (const { start, end } of bonesOf(panel.marks[view])) {
    context.moveTo(start.x, start.y);
    context.lineTo(end.x, end.y);
  }
  context.stroke();
}

/** The lines that say where the pose is: under-drawing only while there is nothing else. */
function linesOf(ink: readonly InkStroke[]): readonly InkStroke[] {
  const lines = ink.filter(({ nib }) => nib !== "under");
  return lines.length > 0 ? lines : ink;
}

type Hinted = Pick<Stroke, "nib" | "width" | "points">;

function paintSolid(context: CanvasRenderingContext2D, stroke: Hinted, scale: number): void {
  context.fill(strokePath(stroke));
  const extra = extraWidth(stroke.width, scale);
  if (extra === 0) return;
  context.lineWidth = extra;
  context.stroke(strokePath(stroke));
}

const HINT_SHARE = 0.45; // of a stroke's width, so that a broad one does not hide its dashes

function paintDashed(context: CanvasRenderingContext2D, stroke: Hinted, scale: number): void {
  context.lineWidth = Math.max(HINT_SHARE * stroke.width, 1 / scale);
  context.stroke(middlePath(stroke));
}
