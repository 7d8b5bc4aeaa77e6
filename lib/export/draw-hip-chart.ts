import type { BandPoint, HipBand, HipCurve } from "../gait";
import type { Point } from "../geometry";
import type { HipRemarks, Hitch } from "./hip-remarks";
import { PALETTE } from "./palette";
import { type Ruler, rulerX, spread } from "./ruler";
import { type Box, traceBox, traceCircle, traceLine, tracePolygon, traceSquare } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/** What the hip chart shows in one row of the strip. Heights in leg lengths. */
export interface HipChart {
  readonly box: Box;
  readonly ruler: Ruler;
  /** The row's panels, in frame order. */
  readonly points: HipCurve["points"];
  readonly bands: readonly HipBand[];
  /** Lowest and highest height of the whole sheet's chart: all rows share it. */
  readonly range: HeightRange;
  /** What is remarked on the hips. */
  readonly remarked: HipRemarks;
}

export interface HeightRange {
  readonly low: number;
  readonly high: number;
}

interface KnownPoint {
  readonly panel: string;
  readonly frame: number;
  readonly height: number;
}

const VALUE: Face = { size: 13, weight: 400 };
const VALUE_LINE = 20; // px at the box's foot for the heights in figures
const PAD = 10;

/**
 * Draws the hips' height along the ruler: the band that the yardstick expects, the line through the
 * marked panels (broken where hips are not marked), and each height in figures.
 *
 * Units:   page pixels
 */
export function drawHipChart(surface: Surface, chart: HipChart, measure: MeasureText): void {
  const { box, ruler, points, bands, range, remarked } = chart;
  const plot = { ...box, height: box.height - VALUE_LINE };
  const at = ({ frame, height }: { frame: number; height: number }): Point => ({
    x: rulerX(ruler, frame),
    y: yOf(plot, range, height),
  });
  surface.save();
  surface.setLineDash([]);
  traceBox(surface, box, 3);
  surface.fillStyle = PALETTE.paper;
  surface.fill();
  surface.strokeStyle = PALETTE.paperEdge;
  surface.lineWidth = 1;
  surface.stroke();
  drawBands(surface, bands, plot, (frame, height) => at({ frame, height }), range);
  for (const run of runsOf(points)) drawRun(surface, run.map(at));
  const known = runsOf(points).flat();
  for (const hitch of remarked.hitches) drawHitch(surface, hitch, known, at);
  for (const point of known) drawDot(surface, at(point), remarked.panels.has(point.panel));
  if (known.length > 0) drawValues(surface, known, chart, measure);
  else drawInvitation(surface, box);
  surface.restore();
}

/** Lowest and highest height worth showing, with room: at least 8 % of a leg. */
export function hipRange(points: HipCurve["points"]): HeightRange {
  const heights = points.flatMap(({ height }) => (height.kind === "value" ? [height.value] : []));
  if (heights.length === 0) return { low: 0.9, high: 1 };
  const low = Math.min(...heights);
  const high = Math.max(...heights);
  const air = Math.max(0.012, (0.08 - (high - low)) / 2);
  return { low: low - air, high: high + air };
}

function yOf(plot: Box, { low, high }: HeightRange, height: number): number {
  const share = Math.min(1, Math.max(0, (height - low) / (high - low)));
  return plot.y + plot.height - PAD / 2 - share * (plot.height - PAD);
}

function drawBands(
  surface: Surface,
  bands: readonly HipBand[],
  plot: Box,
  at: (frame: number, height: number) => Point,
  range: HeightRange,
): void {
  surface.save();
  traceBox(surface, plot);
  surface.clip();
  for (const { points } of bands) {
    const spans = points
      .toSorted((a, b) => a.frame - b.frame)
      .map(({ frame, low, high }: BandPoint) => ({
        upper: at(frame, high ?? range.high),
        lower: at(frame, low ?? range.low),
      }));
    const open = points.some(({ low, high }) => low === null || high === null);
    if (open) for (const span of spans) fillSlot(surface, span);
    else fillBand(surface, spans);
  }
  surface.restore();
}

interface Span {
  readonly upper: Point;
  readonly lower: Point;
}

/** A measured span at every moment is one band. */
function fillBand(surface: Surface, spans: readonly Span[]): void {
  if (spans.length < 2) return;
  const below = spans.map(({ lower }) => lower).reverse();
  tracePolygon(surface, [...spans.map(({ upper }) => upper), ...below]);
  fillBandArea(surface);
}

/** Paints the area that was traced as what is expected: a wash, and an edge that a grey copy keeps. */
export function fillBandArea(surface: Surface): void {
  surface.fillStyle = PALETTE.band;
  surface.fill();
  surface.strokeStyle = PALETTE.bandEdge;
  surface.lineWidth = 0.9;
  surface.stroke();
}

const SLOT = 9; // page pixels, half a slot's width

/** Where only single poses are bounded, each has a slot: nothing is claimed about what lies between. */
function fillSlot(surface: Surface, { upper, lower }: Span): void {
  traceBox(surface, {
    x: upper.x - SLOT,
    y: upper.y,
    width: 2 * SLOT,
    height: lower.y - upper.y,
  });
  fillBandArea(surface);
}

/** The panels with readable hips, in runs between those without. */
function runsOf(points: HipChart["points"]): KnownPoint[][] {
  const runs: KnownPoint[][] = [[]];
  for (const { panel, frame, height } of points) {
    if (height.kind === "value") runs.at(-1)?.push({ panel, frame, height: height.value });
    else runs.push([]);
  }
  return runs;
}

function drawRun(surface: Surface, line: readonly Point[]): void {
  if (line.length < 2) return;
  traceLine(surface, line);
  surface.strokeStyle = PALETTE.graphite;
  surface.lineWidth = 2;
  surface.lineJoin = "round";
  surface.stroke();
}

const CARET = 7; // page pixels, half its width

/** A hitch: its stretch of the line bold, and a caret over the middle, so that it is told without colour. */
function drawHitch(
  surface: Surface,
  { from, to }: Hitch,
  known: readonly KnownPoint[],
  at: (point: KnownPoint) => Point,
): void {
  const ends = [from, to].flatMap((id) => known.filter(({ panel }) => panel === id).map(at));
  const [start, end] = ends;
  if (start === undefined || end === undefined) return;
  const middle = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 - CARET };
  surface.strokeStyle = PALETTE.raspberry;
  surface.lineWidth = 3.2;
  traceLine(surface, [start, end]);
  surface.stroke();
  surface.lineWidth = 2;
  traceLine(surface, [
    { x: middle.x - CARET, y: middle.y },
    { x: middle.x, y: middle.y - CARET },
    { x: middle.x + CARET, y: middle.y },
  ]);
  surface.stroke();
}

function drawDot(surface: Surface, at: Point, remarked: boolean): void {
  // A remark's dot is square and larger, so that it is told without colour, too.
  if (remarked) traceSquare(surface, at, 6);
  else traceCircle(surface, at, 4);
  surface.fillStyle = remarked ? PALETTE.raspberry : PALETTE.graphite;
  surface.fill();
}

function drawValues(
  surface: Surface,
  known: readonly KnownPoint[],
  { box, ruler, remarked }: HipChart,
  measure: MeasureText,
): void {
  const texts = known.map(({ height }) => height.toFixed(3));
  const wishes = known.map(({ frame }, index) => ({
    at: rulerX(ruler, frame),
    width: measure(texts[index] ?? "", VALUE),
  }));
  const middles = spread(wishes, { left: box.x + 6, right: box.x + box.width - 6 }, 6);
  known.forEach(({ panel }, index) => {
    drawText(surface, {
      text: texts[index] ?? "",
      x: middles[index] ?? 0,
      y: box.y + box.height - 6,
      face: remarked.panels.has(panel) ? { ...VALUE, weight: 700 } : VALUE,
      colour: remarked.panels.has(panel) ? PALETTE.raspberry : PALETTE.faintText,
      align: "center",
    });
  });
}

function drawInvitation(surface: Surface, box: Box): void {
  drawText(surface, {
    text: "Hips not marked yet",
    x: box.x + box.width / 2,
    y: box.y + box.height / 2 + 5,
    face: { size: 15, weight: 400 },
    colour: PALETTE.faintText,
    align: "center",
  });
}
