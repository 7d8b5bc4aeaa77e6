import type { Level } from "../gait";
import type { Point } from "../geometry";
import { levelColour, PALETTE } from "./palette";
import { traceCircle, traceTriangle } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";

/** What a sign may say: a remark's level, or that the team keeps it on purpose. */
export type SignKind = Level | "on-purpose";

/** The words of each sign, as the legend and the margin say them. */
export const SIGN_WORDS: Readonly<Record<SignKind, string>> = {
  shows: "will show",
  "may-show": "may show",
  tidy: "tidy",
  "on-purpose": "on purpose",
};

const MOST_COUNTED = 9; // two figures do not fit the triangle

/**
 * Draws a remark's sign: ▲ filled for what shows, △ hollow for what may, a dot for tidy, a ring for
 * on purpose. `count` stands inside the triangles.
 *
 * Units:   the surface's; `radius` is half the sign's height
 */
export function drawSign(
  surface: Surface,
  kind: SignKind,
  at: Point,
  radius: number,
  count?: number | undefined,
): void {
  surface.save();
  surface.setLineDash([]);
  surface.lineJoin = "round";
  surface.lineWidth = radius * 0.22;
  if (kind === "tidy" || kind === "on-purpose") drawRound(surface, kind, at, radius);
  else drawTriangle(surface, kind, at, radius, count);
  surface.restore();
}

function drawRound(surface: Surface, kind: SignKind, at: Point, radius: number): void {
  const colour = PALETTE.faintText;
  traceCircle(surface, at, kind === "tidy" ? radius * 0.28 : radius * 0.75);
  if (kind === "tidy") {
    surface.fillStyle = colour;
    surface.fill();
  } else {
    surface.strokeStyle = colour;
    surface.stroke();
  }
}

function drawTriangle(
  surface: Surface,
  kind: "shows" | "may-show",
  at: Point,
  radius: number,
  count: number | undefined,
): void {
  const colour = levelColour(kind);
  traceTriangle(surface, at, radius);
  surface.fillStyle = kind === "shows" ? colour : PALETTE.paper;
  surface.fill();
  surface.strokeStyle = colour;
  surface.stroke();
  if (count === undefined) return;
  drawText(surface, {
    text: count > MOST_COUNTED ? "+" : String(count),
    x: at.x,
    y: at.y + radius * 0.68,
    face: { size: radius * 1.05, weight: 700 },
    colour: kind === "shows" ? "#ffffff" : colour,
    align: "center",
  });
}
