import { SIDES, type Side } from "../body";
import type { FootSpan, FootState } from "../gait";
import { traceSide } from "./draw-marks";
import { PALETTE, sideColour } from "./palette";
import { type Box, traceBox, traceCircle, traceLine } from "./shapes";
import type { StripRow } from "./strip-layout";
import { rowX } from "./strip-layout";
import type { Surface } from "./surface";

/** How tall each bar is, of a lane: the more of the foot is down, the taller. */
const TALL = { flat: 0.78, untold: 0.78, heel: 0.5, ball: 0.5, toe: 0.32 } as const;
const SIGN = 4.5;

/**
 * Draws which foot is down when, a lane a foot, left over right: flat is tall and full; heel and
 * ball are lower, toe is lowest, and each is hatched its own way; air is bare ground, what cannot be told is
 * dotted.
 *
 * Units:   page units
 */
export function drawFootfalls(surface: Surface, row: StripRow, spans: readonly FootSpan[]): void {
  for (const side of SIDES) {
    const own = spans.filter((span) => span.side === side);
    drawLane(surface, row, side, own);
  }
}

function drawLane(surface: Surface, row: StripRow, side: Side, spans: readonly FootSpan[]): void {
  const lane = laneOf(row.footfalls, side);
  const ground = lane.y + lane.height;
  const [left, right] = [rowX(row, row.ruler.from), rowEnd(row)];
  surface.save();
  surface.setLineDash([]);
  surface.strokeStyle = sideColour(side);
  surface.fillStyle = sideColour(side);
  surface.lineWidth = 1;
  traceLine(surface, [
    { x: left, y: ground },
    { x: right, y: ground },
  ]);
  surface.stroke();
  traceSide(surface, side, { x: left - 12, y: ground - lane.height / 2 }, SIGN);
  surface.fill();
  for (const { from, to, state } of joined(spans)) {
    const x = Math.max(left, rowX(row, from));
    const width = Math.min(right, rowX(row, to)) - x;
    if (to <= row.ruler.from || width <= 0) continue;
    drawFootBar(surface, state, side, { ...lane, x, width });
  }
  surface.restore();
}

interface Stay {
  readonly from: number;
  to: number;
  readonly state: FootState | null;
}

/** Spans that follow each other and say the same, as one. */
function joined(spans: readonly FootSpan[]): readonly Stay[] {
  const stays: Stay[] = [];
  for (const { from, to, foot } of spans) {
    const state = foot.kind === "value" ? foot.state : null;
    const last = stays.at(-1);
    if (last?.state === state && last.to === from) last.to = to;
    else stays.push({ from, to, state });
  }
  return stays;
}

/** Where a row's last span ends: at the next row's first panel, or with its own last. */
function rowEnd(row: StripRow): number {
  return row.next === null ? row.ruler.right : row.footfalls.x + row.footfalls.width;
}

function laneOf(box: Box, side: Side): Box {
  const height = box.height / SIDES.length;
  return { ...box, y: box.y + SIDES.indexOf(side) * height, height: height - 4 };
}

/** Draws how one foot meets the ground over a stretch of its lane; null where it cannot be told. */
export function drawFootBar(
  surface: Surface,
  state: FootState | null,
  side: Side,
  lane: Box,
): void {
  if (state === "air") return;
  const height = lane.height * TALL[state ?? "untold"];
  const bar = {
    x: lane.x + 0.5,
    y: lane.y + lane.height - height,
    width: Math.max(0.5, lane.width - 1),
    height,
  };
  surface.save();
  surface.strokeStyle = state === null ? PALETTE.faintText : sideColour(side);
  surface.fillStyle = surface.strokeStyle;
  surface.lineWidth = 1.1;
  if (state === "flat") {
    traceBox(surface, bar);
    surface.fill();
  } else if (state === null) {
    drawDots(surface, bar);
  } else if (state === "toe") {
    drawPickets(surface, bar);
    traceBox(surface, bar);
    surface.stroke();
  } else {
    drawHatch(surface, bar, state === "heel" ? 1 : -1);
    traceBox(surface, bar);
    surface.stroke();
  }
  surface.restore();
}

const HATCH = 5; // units from one line to the next

/** Lines at 45°, rising to the right for 1, falling for −1, each cut off at the bar's edges. */
function drawHatch(surface: Surface, { x, y, width, height }: Box, slope: 1 | -1): void {
  for (let at = HATCH - height; at < width; at += HATCH) {
    const [from, to] = [Math.max(0, at), Math.min(width, at + height)];
    const rise = (along: number) => (slope === 1 ? y + height - (along - at) : y + (along - at));
    traceLine(surface, [
      { x: x + from, y: rise(from) },
      { x: x + to, y: rise(to) },
    ]);
    surface.stroke();
  }
}

const PICKETS = 3; // units from one upright line to the next

function drawPickets(surface: Surface, { x, y, width, height }: Box): void {
  for (let at = PICKETS; at < width; at += PICKETS) {
    traceLine(surface, [
      { x: x + at, y },
      { x: x + at, y: y + height },
    ]);
    surface.stroke();
  }
}

const DOTS = 7; // units from one dot to the next

function drawDots(surface: Surface, { x, y, width, height }: Box): void {
  for (let at = DOTS / 2; at < width; at += DOTS) {
    traceCircle(surface, { x: x + at, y: y + height / 2 }, 1.1);
    surface.fill();
  }
}
