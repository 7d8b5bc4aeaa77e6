import { bonesOf } from "../../lib/body";
import type { View } from "../../lib/geometry";
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
  for (const [index, stroke] of panel.ink[view].entries()) {
    context.lineWidth =
      when === "before" ? extraWidth(stroke.width, scale) : hintWidth(stroke.width, scale);
    if (when === "before") context.fill(strokePath(stroke));
    if (when === "before" && context.lineWidth > 0) context.stroke(strokePath(stroke));
    if (when === "after") context.stroke(middlePath(stroke));
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

const HINT_SHARE = 0.45; // of a stroke's width, so that a broad one does not hide its dashes

function hintWidth(width: number, scale: number): number {
  return Math.max(HINT_SHARE * width, 1 / scale);
}
