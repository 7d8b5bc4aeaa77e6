import type { Side } from "../../../body";
import { curve } from "../hand/curve";
import { Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { type Placer, placed, placerAt } from "../hand/placer";
import { add, between, sub } from "../hand/vector";
import type { FrontFigure } from "./front-figure";
import { mirrored } from "./head-front";

/** How high over the ankle the boot's top lies, along the shin as it is seen. Leg lengths of a whole shank. */
export const SHAFT = 0.19 / 0.44;
const SOLE_SHOWS = 0.04; // leg lengths that the toe stands over the heel

/** A boot coming toward us: the sole shows where the toe is up. */
export function drawBootFront(pencil: Pencil, figure: FrontFigure, side: Side, firm: number): void {
  const [heel, toe] = [figure.of(side, "heel"), figure.of(side, "toe")];
  const [knee, ankle] = [figure.of(side, "knee"), figure.of(side, "ankle")];
  if (toe.y - heel.y > SOLE_SHOWS) drawSole(pencil, heel, toe, firm);
  const shaft = placerAt(ankle, sub(knee, ankle));
  const top = placerAt(between(ankle, knee, SHAFT), sub(knee, ankle));
  const cap = placerAt(toe, { x: 0, y: 1 });
  const half = (turn: (place: Placer) => Placer) =>
    curve([
      turn(top)(0.092, 0.004),
      between(turn(top)(0.08, 0), turn(shaft)(0.072, 0), 0.5),
      turn(shaft)(0.06, 0.02),
      between(turn(shaft)(0.062, -0.02), turn(cap)(0.088, 0.052), 0.65),
      ...placed(turn(cap), "90,34 80,6"),
    ]);
  const left = half(mirrored);
  const right = half((place) => place);
  const under = curve(placed(cap, "-80,6 -40,-6 30,-6 80,6"));
  const cuff = curve(placed(top, "-96,6 0,-16 96,6"));
  pencil.line(left, { firm, outside: "right" });
  pencil.line(right, { firm, outside: "left" });
  pencil.line(under, { firm: Math.min(1, firm * 1.2), width: 9, nib: "broad" });
  pencil.line(cuff, { firm: firm * 0.9 });
  new Part(pencil, top).line("-90,-32 0,-54 90,-32", thin(firm * 0.66));
  new Part(pencil, cap).line("-82,27 -30,16 30,16 82,27", thin(firm * 0.7));
  new Part(pencil, cap).line("-62,70 0,99 62,70", thin(firm * 0.62));
  const vamp = between(ankle, toe, 0.45);
  pencil.line(
    curve([
      add(vamp, { x: -0.045, y: 0.03 }),
      add(vamp, { x: 0.004, y: 0.016 }),
      add(vamp, { x: 0.048, y: 0.03 }),
    ]),
    thin(firm * 0.5),
  );
  pencil.solid([...left, ...under, ...right.toReversed(), ...cuff.toReversed()]);
}

/** The sole of a foot that comes down on its heel. */
function drawSole(
  pencil: Pencil,
  heel: { x: number; y: number },
  toe: { x: number; y: number },
  firm: number,
): void {
  const low = placerAt(heel, { x: 0, y: 1 });
  const high = placerAt(toe, { x: 0, y: 1 });
  const outline = curve(
    [
      ...placed(high, "-60,16 0,26 60,16 80,-12"),
      between(high(0.07, -0.04), low(0.055, 0.03), 0.6),
      ...placed(low, "56,12 30,-1 -30,-1 -56,12"),
      between(high(-0.07, -0.04), low(-0.055, 0.03), 0.6),
      high(-0.08, -0.012),
    ],
    true,
  );
  const part = new Part(pencil, low);
  part.line("-56,36 0,45 56,36", thin(firm * 0.85, 5));
  pencil.form(outline, { firm, width: 6.4 });
}
