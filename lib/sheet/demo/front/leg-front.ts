import type { Side } from "../../../body";
import { curve } from "../hand/curve";
import { alongLimb, type LimbJoints, limbLines, limbOutline, type Station } from "../hand/limb";
import { thin, tone } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { add, between, times } from "../hand/vector";
import { drawBootFront, SHAFT } from "./boot-front";
import type { FrontFigure } from "./front-figure";

/** Trousers from ahead, bagging over the boots; wider by the knee, which comes toward us. */
const TROUSERS: readonly Station[] = [
  [0, 0.125, 0.125],
  [0.5, 0.11, 0.112],
  [0.9, 0.096, 0.098],
  [1.1, 0.088, 0.088],
  [1.5, 0.096, 0.096],
  [1.82, 0.104, 0.104],
  [2, 0.086, 0.086],
];

/** A leg coming toward us. `shaded` for the one that is behind. */
export function drawLegFront(
  pencil: Pencil,
  figure: FrontFigure,
  side: Side,
  shaded: boolean,
): void {
  const firm = shaded ? 0.56 : 0.68;
  drawBootFront(pencil, figure, side, firm);
  const [hip, knee, ankle] = [
    figure.of(side, "hip"),
    figure.of(side, "knee"),
    figure.of(side, "ankle"),
  ];
  const joints: LimbJoints = [hip, knee, between(ankle, knee, SHAFT * 0.94)];
  const lines = limbLines(joints, TROUSERS);
  pencil.line(lines.front, { firm, outside: "left" });
  pencil.line(lines.back, { firm, outside: "right" });
  drawFolds(pencil, joints, firm);
  const outline = limbOutline(lines);
  const edge = edgeOf(joints);
  if (shaded) tone(pencil, outline, 0.052, 0.34);
  else tone(pencil, [edge(0.5, 0.1), edge(0.86, 0.1), edge(0.78, -0.1), edge(0.5, -0.1)], 0.05);
  pencil.solid(outline);
}

function edgeOf(joints: LimbJoints) {
  return (along: number, aside: number) => {
    const { point, normal } = alongLimb(joints, along);
    return add(point, times(normal, aside));
  };
}

/** Over the knee, and where the cloth bags over the boot. */
function drawFolds(pencil: Pencil, joints: LimbJoints, firm: number): void {
  const edge = edgeOf(joints);
  const fold = (along: number, from: number, to: number, sag: number) =>
    pencil.line(
      curve([edge(along, from), edge(along + sag * 0.9, (from + to) / 2), edge(along + sag, to)]),
      thin(firm * 0.62),
    );
  fold(0.98, 0.05, -0.03, 0.1);
  fold(1.76, 0.09, 0, 0.1);
  fold(1.72, -0.092, -0.03, 0.12);
}
