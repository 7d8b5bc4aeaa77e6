import type { Point } from "../../../geometry";
import { curve } from "../hand/curve";
import { alongLimb, type LimbJoints, limbLines, type Station } from "../hand/limb";
import { Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { placed, placerAt } from "../hand/placer";
import { add, between, sub, times, turned } from "../hand/vector";
import { drawFist, drawRelaxedHand } from "./hand-side";
import type { SideFigure } from "./side-figure";

const SLEEVE: readonly Station[] = [
  [0.02, 0.086, 0.09],
  [0.3, 0.09, 0.088],
  [0.7, 0.078, 0.07],
  [1, 0.066, 0.072],
  [1.35, 0.07, 0.066],
  [1.7, 0.064, 0.058],
  [1.9, 0.066, 0.062],
];

/** The near arm: sleeve, turned-back cuff, and a hand that hangs at ease and trails. */
export function drawFreeArm(pencil: Pencil, figure: SideFigure): void {
  const joints = jointsOf(figure, "right");
  const [, elbow, wrist] = joints;
  const way = sub(elbow, wrist);
  drawRelaxedHand(pencil, placerAt(wrist, turned(way, figure.pose.arm.hand)));
  drawCuff(pencil, wrist, way);
  const { front, back } = limbLines(joints, SLEEVE);
  const cap = curve([
    ...back.slice(0, 1),
    ...placed(figure.chest, "-50,5 45,10"),
    ...front.slice(0, 1),
  ]);
  pencil.line(front, { firm: 0.66, outside: "left" });
  pencil.line(back, { firm: 0.7, outside: "right" });
  pencil.line(cap.slice(4, -4), { firm: 0.52, outside: "left" });
  for (const crease of CREASES) drawCrease(pencil, joints, crease);
  pencil.solid([...cap, ...front, ...back.toReversed()]);
}

/** The far arm, bent up to the strap; the coat hides most of it. */
export function drawHoldingArm(pencil: Pencil, figure: SideFigure): void {
  const [shoulder, elbow, wrist] = jointsOf(figure, "left");
  const firm = 0.58;
  const up = sub(figure.chest(0, 1), figure.chest(0, 0));
  const fist = placerAt(wrist, up);
  drawFist(new Part(pencil, fist), firm);
  const strap = curve([fist(-0.03, 0.04), ...placed(figure.chest, "130,0 60,70")]);
  for (const [x, y] of [
    [0.022, 0.016],
    [-0.022, -0.016],
  ] as const) {
    pencil.line(
      strap.map((point) => add(point, { x, y })),
      thin(firm, 5),
    );
  }
  const narrower = SLEEVE.map(
    ([along, front, back]): Station => [along, front * 0.94, back * 0.94],
  );
  const joints = [shoulder, elbow, between(elbow, wrist, 0.95)] as const;
  const { front, back } = limbLines(joints, narrower);
  drawCrease(pencil, joints, [0.98, 0.06, 0, 0.06, 0.5]);
  pencil.line(front, { firm, outside: "left" });
  pencil.line(back, { firm: firm * 1.1, outside: "right" });
  pencil.solid([...front, ...back.toReversed()]);
}

function jointsOf(figure: SideFigure, side: "left" | "right"): LimbJoints {
  return [figure.of(side, "shoulder"), figure.of(side, "elbow"), figure.of(side, "wrist")];
}

function drawCuff(pencil: Pencil, wrist: Point, way: Point): void {
  const part = new Part(pencil, placerAt(wrist, way));
  const lower = part.path("68,14 0,-4 -64,12");
  const upper = part.path("70,70 0,52 -66,66");
  pencil.line(lower, { firm: 0.74 });
  pencil.line(upper, thin(0.56, 4.4));
  part.line("69,14 73,70", { firm: 0.6, outside: "right" });
  part.line("-65,12 -68,66", { firm: 0.68, outside: "left" });
  pencil.solid([...lower, ...upper.toReversed()]);
}

/** A fold: where it begins along the limb and how far out, how far out it ends and how much further along, how firm. */
type Crease = readonly [along: number, from: number, to: number, shift: number, firm: number];

/** They gather inside the elbow, and at the armpit. */
const CREASES: readonly Crease[] = [
  [0.9, 0.074, -0.01, 0.12, 0.46],
  [1.02, 0.07, -0.004, 0.02, 0.52],
  [1.12, 0.07, 0, -0.06, 0.42],
  [0.16, 0.09, 0.03, 0.22, 0.38],
  [0.1, -0.09, -0.04, 0.2, 0.42],
];

function drawCrease(
  pencil: Pencil,
  joints: LimbJoints,
  [along, from, to, shift, firm]: Crease,
): void {
  const a = alongLimb(joints, along);
  const b = alongLimb(joints, along + shift);
  const [start, end] = [add(a.point, times(a.normal, from)), add(b.point, times(b.normal, to))];
  const middle = add(between(start, end, 0.5), times(a.normal, 0.004));
  pencil.line(curve([start, middle, end]), thin(firm));
}
