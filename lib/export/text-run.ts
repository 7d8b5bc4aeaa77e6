import type { Surface } from "./surface";
import { type Face, fontOf } from "./typeface";

/** One line of text with its place: `y` is its baseline, `x` its left, middle or right by `align`. */
export interface TextRun {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly face: Face;
  readonly colour: string;
  readonly align?: "left" | "center" | "right";
}

/** Draws a line of text; an empty one draws nothing. */
export function drawText(surface: Surface, run: TextRun): void {
  if (run.text === "") return;
  surface.font = fontOf(run.face);
  surface.fillStyle = run.colour;
  surface.textAlign = run.align ?? "left";
  surface.fillText(run.text, run.x, run.y);
}
