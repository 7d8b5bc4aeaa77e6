import type { Point } from "../../../geometry";
import { curve } from "../hand/curve";
import { dark, Part, thin, tone } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { placed } from "../hand/placer";
import { between } from "../hand/vector";
import { type Hem, hemOf } from "./hem-side";
import type { SideFigure } from "./side-figure";

/** The coat: a back rounded by the load, the belt, a skirt that the thighs push and that lags behind them. */
export function drawCoat(pencil: Pencil, figure: SideFigure): void {
  const { chest, waist, hips } = figure;
  const hem = hemOf(figure);
  const back = curve([
    ...placed(chest, "-80,0 -158,-52 -196,-160 -184,-262"),
    ...placed(waist, "-144,15 -147,-30"),
    ...placed(hips, "-196,98"),
    between(hips(-0.222, 0), hem.back, 0.35),
    hem.back,
  ]);
  const front = curve([
    ...placed(chest, "80,-20 144,-98 176,-200"),
    ...placed(waist, "190,60 174,0 170,-30"),
    ...placed(hips, "186,100"),
    between(hips(0.195, -0.03), hem.front, 0.35),
    hem.front,
  ]);
  drawBelt(new Part(pencil, waist));
  pencil.line(back, { firm: 0.7, outside: "right" });
  pencil.line(front, { firm: 0.68, outside: "left" });
  pencil.line(hem.line, { firm: 0.68, width: 6.8, outside: "right" });
  drawFront(pencil, figure, hem);
  drawFolds(pencil, figure, hem);
  shade(pencil, figure, hem);
  pencil.solid([...back, ...hem.line, ...front.toReversed()]);
}

function drawBelt(part: Part): void {
  part.form("120,12 168,22 166,-46 120,-56", thin(0.62, 4.6));
  part.line("134,-16 150,-14 164,-12", thin(0.5));
  part.line("-148,-4 -50,-33 60,-39 122,-28", dark(16));
  part.line("-147,22 -50,-6 60,-12 176,18", thin(0.62, 5));
  part.line("-148,-32 -50,-60 60,-66 172,-36", thin(0.68, 5.6));
}

/** The front edge with its buttons, and the pocket on the skirt. */
function drawFront(pencil: Pencil, { chest, waist, hips }: SideFigure, hem: Hem): void {
  const above = [...placed(chest, "75,-50 112,-140 132,-240"), waist(0.13, 0.01)];
  pencil.line(curve(above), thin(0.5));
  const below = [
    waist(0.118, -0.06),
    between(hips(0.12, -0.02), hem.front, 0.4),
    hem.at(0.88, -0.018),
  ];
  pencil.line(curve(below), thin(0.5));
  const part = new Part(pencil, chest);
  for (const button of [
    "128,-142 140,-150 128,-158 118,-150 128,-142",
    "146,-227 158,-235 146,-243 136,-235 146,-227",
  ]) {
    part.line(button, thin(0.7));
  }
  new Part(pencil, waist).form("0,-122 94,-110 100,-164 50,-178 -4,-172", thin(0.52, 4.4));
}

/** What the belt gathers, what hangs from it, what the strap pulls. */
function drawFolds(pencil: Pencil, { chest, waist }: SideFigure, hem: Hem): void {
  const belt = new Part(pencil, waist);
  belt.line("-100,28 -108,64 -120,100", thin(0.44));
  belt.line("-48,12 -44,40 -50,74", thin(0.42));
  const hanging = [
    { from: -0.112, share: 0.14, to: 0.62 },
    { from: -0.058, share: 0.33, to: 0.84 },
    { from: -0.012, share: 0.52, to: 0.46 },
  ];
  for (const { from, share, to } of hanging) {
    const top = waist(from, -0.07);
    const bottom = hem.at(share, 0);
    const middle = between(top, bottom, to * 0.55);
    pencil.line(
      curve([top, { x: middle.x + 0.008, y: middle.y }, between(top, bottom, to)]),
      thin(0.48),
    );
  }
  pencil.line(curve([hem.at(0.2, -0.016), hem.at(0.23, 0.06), hem.at(0.27, 0.12)]), thin(0.42));
  pencil.line(curve([hem.at(0.62, -0.026), hem.at(0.6, 0.05), hem.at(0.57, 0.1)]), thin(0.4));
  new Part(pencil, chest).line("-104,-48 -134,-128 -124,-206", thin(0.38));
}

/** Tone down the back, where the light does not come. */
function shade(pencil: Pencil, { chest, waist, hips }: SideFigure, hem: Hem): void {
  const upper = [
    ...placed(chest, "-152,-66 -193,-180"),
    ...placed(waist, "-146,30 -90,30"),
    chest(-0.12, -0.16),
  ];
  const lower: Point[] = [
    waist(-0.144, -0.05),
    hips(-0.192, 0.02),
    hem.back,
    hem.at(0.2, -0.01),
    waist(-0.075, -0.07),
  ];
  tone(pencil, curve(upper, true), 0.046);
  tone(pencil, curve(lower, true), 0.046);
}
