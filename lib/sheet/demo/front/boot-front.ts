import type { Side } from "../../../body";
import type { Point } from "../../../geometry";
import { curve } from "../hand/curve";
import { Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { type Placer, placed, placerAt } from "../hand/placer";
import { between, sub } from "../hand/vector";
import type { FrontFigure } from "./front-figure";
import { mirrored } from "./head-front";

/** How high over the ankle the boot's top lies, along the shin as it is seen. Leg lengths of a whole shank. */
export const SHAFT = 0.19 / 0.44;
const SOLE_SHOWS = 0.07; // leg lengths that the toe stands over the heel

/** A boot coming toward us; where the toe is up the sole hides the rest of the foot. */
export function drawBootFront(pencil: Pencil, figure: FrontFigure, side: Side, firm: number): void {
  const parts = partsOf(figure, side);
  const raised = figure.of(side, "toe").y - figure.of(side, "heel").y > SOLE_SHOWS;
  if (raised) drawSole(pencil, parts, firm);
  const half = (turn: (place: Placer) => Placer) => {
    const shaft = turn(parts.shaft);
    const shin = [
      turn(parts.top)(0.092, 0.004),
      between(turn(parts.top)(0.08, 0), shaft(0.072, 0), 0.5),
    ];
    if (raised) return curve([...shin, shaft(0.066, 0.03), turn(parts.toe)(0.066, -0.02)]);
    const toe = turn(parts.toe);
    const instep = between(shaft(0.062, -0.02), toe(0.088, 0.052), 0.65);
    return curve([...shin, shaft(0.06, 0.02), instep, ...placed(toe, "90,34 80,6")]);
  };
  const left = half(mirrored);
  const right = half((place) => place);
  const cuff = curve(placed(parts.top, "-96,6 0,-16 96,6"));
  pencil.line(left, { firm, outside: "right" });
  pencil.line(right, { firm, outside: "left" });
  pencil.line(cuff, { firm: firm * 0.9 });
  new Part(pencil, parts.top).line("-90,-32 0,-54 90,-32", thin(firm * 0.66));
  const under = raised ? [] : drawToeCap(pencil, parts, firm);
  pencil.solid([...left, ...under, ...right.toReversed(), ...cuff.toReversed()]);
}

/** The parts of a boot: about the ankle and the boot's top along the shin; toe and heel upright. */
interface BootParts {
  readonly top: Placer;
  readonly shaft: Placer;
  readonly toe: Placer;
  readonly heel: Placer;
  readonly vamp: Placer;
}

function partsOf(figure: FrontFigure, side: Side): BootParts {
  const [knee, ankle] = [figure.of(side, "knee"), figure.of(side, "ankle")];
  const [heel, toe] = [figure.of(side, "heel"), figure.of(side, "toe")];
  const up = sub(knee, ankle);
  const upright = { x: 0, y: 1 };
  return {
    top: placerAt(between(ankle, knee, SHAFT), up),
    shaft: placerAt(ankle, up),
    toe: placerAt(toe, upright),
    heel: placerAt(heel, upright),
    vamp: placerAt(between(ankle, toe, 0.45), upright),
  };
}

/** Sole's edge, welt, toe cap and a crease; answers with the line it stands on. */
function drawToeCap(pencil: Pencil, { toe, vamp }: BootParts, firm: number): Point[] {
  const cap = new Part(pencil, toe);
  const under = cap.path("-80,6 -40,-6 30,-6 80,6");
  pencil.line(under, { firm: Math.min(1, firm * 1.2), width: 9, nib: "broad" });
  cap.line("-82,27 -30,16 30,16 82,27", thin(firm * 0.7));
  cap.line("-62,70 0,99 62,70", thin(firm * 0.62));
  new Part(pencil, vamp).line("-45,30 4,16 48,30", thin(firm * 0.5));
  return under;
}

/** The sole of a foot that comes down on its heel: heel block, waist and tread. */
function drawSole(pencil: Pencil, { heel, toe }: BootParts, firm: number): void {
  const waist = (k: 1 | -1) => between(toe(k * 0.07, -0.04), heel(k * 0.055, 0.03), 0.6);
  const outline = curve(
    [
      ...placed(toe, "-64,18 0,32 64,18 84,-14"),
      waist(1),
      ...placed(heel, "58,14 34,-2 -34,-2 -58,14"),
      waist(-1),
      toe(-0.084, -0.014),
    ],
    true,
  );
  new Part(pencil, heel).line("-57,38 0,48 57,38", thin(firm * 0.9, 5));
  new Part(pencil, toe).line("-74,-22 0,-36 74,-22", thin(firm * 0.7));
  new Part(pencil, heel).tone("-50,36 0,44 50,36 34,4 -34,4", { gap: 0.026, firm: 0.4 });
  pencil.form(outline, { firm: Math.min(1, firm * 1.1) });
}
