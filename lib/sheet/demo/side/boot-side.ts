import type { Side } from "../../../body";
import { curve } from "../hand/curve";
import { thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { type Placer, placed, placerAt } from "../hand/placer";
import { across, add, sub, unit } from "../hand/vector";
import type { SideFigure } from "./side-figure";

/** How high over the ankle the boot's top lies, leg lengths. */
export const BOOT_TOP = 0.19;

/** The parts of a boot, each turned its own way. */
interface BootParts {
  /** About the ankle, along the shin. */
  readonly shaft: Placer;
  readonly heel: Placer;
  readonly ball: Placer;
  readonly toe: Placer;
  /** Over the ball, half way between the foot's way and the toes': where a boot bends. */
  readonly crease: Placer;
}

function partsOf(figure: SideFigure, side: Side): BootParts {
  const [knee, ankle] = [figure.of(side, "knee"), figure.of(side, "ankle")];
  const [heel, ball, toe] = [
    figure.of(side, "heel"),
    figure.of(side, "ball"),
    figure.of(side, "toe"),
  ];
  const solesUp = across(unit(sub(ball, heel)));
  const toesUp = across(unit(sub(toe, ball)));
  return {
    shaft: placerAt(ankle, sub(knee, ankle)),
    heel: placerAt(heel, solesUp),
    ball: placerAt(ball, solesUp),
    toe: placerAt(toe, toesUp),
    crease: placerAt(ball, add(solesUp, toesUp)),
  };
}

/** A boot from the side, standing on its heel, its ball or flat as the joints do. */
export function drawBoot(pencil: Pencil, figure: SideFigure, side: Side, firm: number): void {
  const parts = partsOf(figure, side);
  const { shaft, heel, ball, toe, crease } = parts;
  const back = curve([
    ...placed(shaft, "-92,190 -83,100"),
    ...placed(heel, "-36,100 -45,55 -41,30"),
  ]);
  const block = curve(placed(heel, "-42,30 -43,0 20,0 62,1"));
  const sole = curve([
    ...placed(heel, "62,1 75,22 130,20"),
    ...placed(ball, "-30,2 20,0"),
    ...placed(toe, "0,0 38,3 47,18"),
  ]);
  const front = curve([
    ...placed(toe, "46,16 51,40 30,68"),
    crease(0.012, 0.092),
    ball(-0.045, 0.115),
    ...placed(shaft, "76,55 74,110 86,190"),
  ]);
  const cuff = curve(placed(shaft, "-97,196 -20,178 90,194"));
  const tread = { firm: Math.min(1, firm * 1.25), width: 9, nib: "broad" } as const;
  pencil.line(back, { firm: firm * 0.95, outside: "right" });
  pencil.line(front, { firm, outside: "left" });
  pencil.line(block, tread);
  pencil.line(sole, tread);
  pencil.line(cuff, { firm: firm * 0.9 });
  drawDetail(pencil, parts, firm);
  pencil.solid([...back, ...block, ...sole, ...front, ...cuff.toReversed()]);
}

/** Welt, the cuff's seam, creases where the boot bends. */
function drawDetail(
  pencil: Pencil,
  { shaft, heel, ball, toe, crease }: BootParts,
  firm: number,
): void {
  const welt = [
    ...placed(heel, "-38,32 60,30"),
    ...placed(ball, "-30,26 30,24"),
    ...placed(toe, "10,22 44,25"),
  ];
  pencil.line(curve(welt), thin(firm * 0.7));
  pencil.line(curve(placed(shaft, "-92,154 -10,138 83,152")), thin(firm * 0.7));
  pencil.line(curve(placed(shaft, "68,62 20,30 -20,22")), thin(firm * 0.7));
  pencil.line(curve(placed(shaft, "70,90 35,68 8,66")), thin(firm * 0.5));
  pencil.line(curve(placed(crease, "16,88 30,60 26,30")), thin(firm * 0.6));
}
