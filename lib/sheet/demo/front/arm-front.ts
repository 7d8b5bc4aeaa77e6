import { limbJoint, type Side } from "../../../body";
import type { Point } from "../../../geometry";
import { curve } from "../hand/curve";
import { Part, thin, tone } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { type Placer, placed, placerAt } from "../hand/placer";
import { inside, solidOf } from "../hand/polygon";
import { add, lengthOf, sub } from "../hand/vector";
import type { FrontFigure } from "./front-figure";
import { drawFistFront, drawHangingHand } from "./hand-front";

const FOREARM = 0.28; // leg lengths, as long as it is when it does not point at us
const ELBOW = 0.16; // leg lengths about the elbow within which forearm and upper arm are one

/** His right arm, on the page's left: it swings past the coat. */
export function drawFreeArmFront(pencil: Pencil, figure: FrontFigure): void {
  const [elbow, wrist] = [figure.of("right", "elbow"), figure.of("right", "wrist")];
  const down = sub(elbow, wrist);
  const near = 1 - Math.min(1, lengthOf(down) / FOREARM); // 0 hanging, 1 pointing at us
  drawCuff(pencil, placerAt(wrist, down), 1 - near);
  drawHangingHand(pencil, placerAt(wrist, { x: down.x * 0.6, y: Math.max(0.05, down.y) }), near);
  drawSleeve(pencil, figure, { side: "right", wrist, firm: 0.66 });
}

/** His left arm, on the page's right, bent up to the strap. */
export function drawHoldingArmFront(pencil: Pencil, figure: FrontFigure): void {
  const [elbow, wrist] = [figure.of("left", "elbow"), figure.of("left", "wrist")];
  drawFistFront(new Part(pencil, placerAt(wrist, { x: -0.12, y: 0.3 })));
  drawStrap(pencil, figure, wrist);
  const low = add(wrist, { x: 0.012, y: -0.03 });
  drawCuff(
    pencil,
    placerAt(low, sub(elbow, low)),
    Math.min(1, lengthOf(sub(elbow, low)) / FOREARM),
  );
  drawSleeve(pencil, figure, { side: "left", wrist: low, firm: 0.7 });
}

/** A turned-back cuff, as short as the forearm is seen. `at` looks up the forearm. */
function drawCuff(pencil: Pencil, at: Placer, length: number): void {
  const high = 0.022 + 0.036 * length;
  const part = new Part(pencil, at);
  const lower = part.path("-66,10 0,-10 66,10");
  const upper = part.path([
    [-0.068, 0.01 + high],
    [0, high - 0.012],
    [0.068, 0.01 + high],
  ]);
  pencil.line(lower, { firm: 0.7 });
  pencil.line(upper, thin(0.56, 4.4));
  part.line(
    [
      [-0.066, 0.01],
      [-0.07, 0.01 + high],
    ],
    thin(0.6, 5.4),
  );
  part.line(
    [
      [0.066, 0.01],
      [0.07, 0.01 + high],
    ],
    thin(0.66, 5.4),
  );
  pencil.solid([...lower, ...upper.toReversed()]);
}

interface Sleeve {
  readonly side: Side;
  readonly wrist: Point;
  readonly firm: number;
}

/** The strap's arm points its forearm at us, so that lies over the upper arm; the other's lie in one line. */
function drawSleeve(pencil: Pencil, figure: FrontFigure, { side, wrist, firm }: Sleeve): void {
  const elbow = figure.of(side, "elbow");
  const upper = upperArm(figure, side);
  const fore = forearm(elbow, wrist);
  const within = (outline: readonly Point[]) => {
    const solid = solidOf(outline);
    return (point: Point) => lengthOf(sub(point, elbow)) < ELBOW && inside(point, solid);
  };
  pencil.line(fore, { firm, outside: "left", skip: within(upper.outline) });
  foldForearm(pencil, elbow, wrist);
  if (side === "left") pencil.solid(fore);
  const skip = within(fore);
  pencil.line(upper.outer, { firm, outside: side === "left" ? "left" : "right", skip });
  pencil.line(upper.inner, {
    firm: firm * 0.96,
    outside: side === "left" ? "right" : "left",
    skip,
  });
  pencil.line(upper.armpit, thin(0.46, 4.4));
  for (const fold of upper.folds) pencil.line(fold, thin(0.44));
  if (side === "left") tone(pencil, upper.outline, 0.085, 0.32);
  pencil.solid(fore);
  pencil.solid(upper.outline);
}

function foldForearm(pencil: Pencil, elbow: Point, wrist: Point): void {
  const far = lengthOf(sub(elbow, wrist));
  const part = new Part(pencil, placerAt(wrist, sub(elbow, wrist)));
  for (const [a, b, u] of [
    [-0.06, -0.01, 0.9],
    [0.06, 0.012, 0.82],
  ] as const) {
    part.line(
      [
        [a, far * u],
        [(a + b) / 2, far * u - 0.006],
        [b, far * u + 0.006],
      ],
      thin(0.44),
    );
  }
}

/** Elbow to cuff: rounded at the elbow, narrower at the hand. */
function forearm(elbow: Point, wrist: Point): Point[] {
  const far = lengthOf(sub(elbow, wrist));
  const half = (k: 1 | -1) =>
    [
      [k * 0.064, 0.02],
      [k * 0.07, far * 0.55],
      [k * 0.074, far * 0.92],
      [k * 0.056, far + 0.042],
    ] as const;
  const tip = [0, far + 0.062] as const;
  return curve(
    placed(placerAt(wrist, sub(elbow, wrist)), [...half(-1), tip, ...half(1).toReversed()]),
  );
}

/** The sleeve from the shoulder down; its inner line begins at the armpit. */
function upperArm(figure: FrontFigure, side: Side) {
  const k = side === "left" ? 1 : -1;
  const drop = side === "left" ? 0.025 : 0; // the strap pulls that shoulder down
  const [shoulder, elbow] = [figure.joint(limbJoint(side, "shoulder")), figure.of(side, "elbow")];
  const far = lengthOf(sub(shoulder, elbow));
  const along = placerAt(elbow, sub(shoulder, elbow));
  const at: Placer = (aside, up) => along(k * aside, up);
  const chest: Placer = (aside, up) => figure.chest(k * aside, up - drop);
  const outer = curve([
    ...placed(chest, "120,-12 190,-28 248,-66"),
    at(0.08, far * 0.62),
    at(0.078, far * 0.2),
    at(0.066, -0.03),
  ]);
  const inner = curve([at(-0.078, far * 0.62), at(-0.072, far * 0.2), at(-0.066, -0.02)]);
  const armpit = curve([...placed(chest, "135,-50 125,-110"), at(-0.078, far * 0.62)]);
  const folds = (
    [
      [-0.07, -0.02, 0.66],
      [0.068, 0.02, 0.2],
    ] as const
  ).map(([a, b, u]) =>
    curve([at(a, far * u), at((a + b) / 2, far * u + 0.012), at(b, far * u + 0.03)]),
  );
  return {
    outer,
    inner,
    armpit,
    folds,
    outline: [...outer, ...inner.toReversed(), ...armpit.toReversed()],
  };
}

/** The strap, from his fist over the low shoulder. */
function drawStrap(pencil: Pencil, { chest }: FrontFigure, wrist: Point): void {
  const middle = curve([
    add(wrist, { x: 0, y: 0.02 }),
    ...placed(chest, "145,-60,120 165,0,20 170,15,-60"),
  ]);
  const left = middle.map((point) => add(point, { x: -0.032, y: 0 }));
  const right = middle.map((point) => add(point, { x: 0.034, y: 0 }));
  pencil.line(left, thin(0.6, 5));
  pencil.line(right, thin(0.7, 5.6));
  pencil.solid([...left, ...right.toReversed()]);
}
