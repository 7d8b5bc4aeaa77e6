import type { Point } from "../../../geometry";
import { curve } from "../hand/curve";
import { dark, Part, thin, tone } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { placed } from "../hand/placer";
import { between } from "../hand/vector";
import type { FrontFigure } from "./front-figure";
import { mirrored } from "./head-front";
import { type FrontHem, frontHemOf } from "./hem-front";

/** The coat from ahead: his right shoulder high, his left pulled down by the strap, the skirt swaying. */
export function drawCoatFront(pencil: Pencil, figure: FrontFigure): void {
  const { chest, waist, hips } = figure;
  const hem = frontHemOf(figure);
  const left = curve([
    ...placed(chest, "-90,0 -170,-30 -222,-80 -212,-200"),
    ...placed(waist, "-190,60 -176,0 -178,-40"),
    hips(-0.207, 0.08),
    between(hips(-0.225, 0), hem.left, 0.4),
    hem.left,
  ]);
  const right = curve([
    ...placed(chest, "90,0 170,-50 222,-110 212,-200"),
    ...placed(waist, "190,60 176,0 178,-40"),
    hips(0.207, 0.08),
    between(hips(0.225, 0), hem.right, 0.4),
    hem.right,
  ]);
  drawBelt(pencil, figure);
  pencil.line(left, { firm: 0.66, outside: "right" });
  pencil.line(right, { firm: 0.72, outside: "left" });
  pencil.line(hem.line, { firm: 0.68, width: 6.8, outside: "right" });
  drawFront(pencil, figure, hem);
  drawFolds(pencil, figure, hem);
  shade(pencil, figure, hem);
  pencil.solid([...left, ...hem.line, ...right.toReversed()]);
}

function drawBelt(pencil: Pencil, { waist, pose }: FrontFigure): void {
  const turned = ((pose.chest.yaw ?? 0) * Math.PI * 0.17) / 180; // the buckle sits 0.17 legs ahead of the spine
  const part = new Part(pencil, waist);
  new Part(pencil, (aside, up) => waist(aside - turned, up)).form(
    "-34,12 34,10 34,-56 -34,-54",
    thin(0.64, 4.6),
  );
  part.line("-182,-6 -80,-33 0,-38 80,-35 182,-10", dark(16));
  part.line("-178,22 -80,-4 80,-6 178,18", thin(0.6, 5));
  part.line("-178,-34 -80,-62 80,-64 178,-38", thin(0.68, 5.4));
}

/** The overlapping edge, its buttons, and the pockets. */
function drawFront(pencil: Pencil, { chest, waist, hips }: FrontFigure, hem: FrontHem): void {
  pencil.line(curve([...placed(chest, "50,-70,160 60,-180,160"), waist(0.05, 0.02)]), thin(0.52));
  pencil.line(
    curve([
      waist(0.045, -0.07),
      between(hips(0.05, 0, 0.12), hem.at(0.62, 0), 0.5),
      hem.at(0.6, -0.036),
    ]),
    thin(0.52),
  );
  for (const [aside, up] of [
    [-0.055, -0.14],
    [0.02, -0.14],
    [-0.055, -0.225],
    [0.02, -0.225],
  ] as const) {
    pencil.line(button(chest(aside, up, 0.16)), thin(0.72));
  }
  for (const side of [mirrored(waist), waist]) {
    new Part(pencil, side).line("80,-125 152,-115 158,-164 112,-180 78,-170 80,-125", thin(0.5));
  }
}

/** What the belt gathers, what hangs from it, what the strap pulls across the breast. */
function drawFolds(pencil: Pencil, { chest, waist }: FrontFigure, hem: FrontHem): void {
  for (const side of [mirrored(waist), waist])
    new Part(pencil, side).line("120,30 136,70 130,112", thin(0.42));
  for (const [aside, from, share] of [
    [-0.13, -0.19, 0.15],
    [-0.02, -0.075, 0.36],
    [0.13, -0.19, 0.86],
  ] as const) {
    const top = waist(aside, from);
    const bottom = hem.at(share, -0.02);
    const middle = between(top, bottom, 0.5);
    pencil.line(curve([top, { x: middle.x + 0.006, y: middle.y }, bottom]), thin(0.46));
  }
  new Part(pencil, chest).line("150,-150,100 90,-200,160 20,-270,160", thin(0.4));
}

function button({ x, y }: Point): Point[] {
  const r = 0.01; // leg lengths
  return curve([
    { x, y: y + r },
    { x: x + r, y },
    { x, y: y - r },
    { x: x - r, y },
    { x, y: y + r },
  ]);
}

/** Tone on his left, where the light does not come. */
function shade(pencil: Pencil, { chest, waist, hips }: FrontFigure, hem: FrontHem): void {
  const upper = [chest(0.21, -0.17), ...placed(waist, "178,30 100,20"), chest(0.14, -0.2)];
  const lower = [
    waist(0.176, -0.05),
    hips(0.212, 0.04),
    hem.right,
    hem.at(0.8, 0),
    waist(0.11, -0.2),
  ];
  tone(pencil, curve(upper, true), 0.052);
  tone(pencil, curve(lower, true), 0.044);
}
