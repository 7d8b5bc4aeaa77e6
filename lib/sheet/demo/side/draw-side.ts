import { SIDES } from "../../../body";
import { drawGroundShadow } from "../hand/ground-shadow";
import { type Drawn, Pencil } from "../hand/pencil";
import type { Figure } from "../pose/figure";
import { drawFreeArm, drawHoldingArm } from "./arm-side";
import { drawCoat } from "./coat-side";
import { drawHead } from "./head-side";
import { drawLeg } from "./leg-side";
import { drawSack } from "./sack-side";
import { drawScarf } from "./scarf-side";
import { sideOf } from "./side-figure";
import { drawUnderSide } from "./under-side";

/** The way to the light: before him and above. */
const LIGHT = { x: 0.55, y: 0.83 };

/** Brindle from his right, near parts before far ones. Units: panel units */
export function drawBrindleSide(figure: Figure, seed: number): readonly Drawn[] {
  const pencil = new Pencil(seed, LIGHT);
  const side = sideOf(figure);
  drawUnderSide(pencil, side);
  drawFreeArm(pencil, side);
  drawScarf(pencil, side);
  drawHead(pencil, side);
  drawCoat(pencil, side);
  drawHoldingArm(pencil, side);
  drawLeg(pencil, side, "right");
  drawSack(pencil, side);
  drawLeg(pencil, side, "left");
  for (const side of SIDES) {
    const sole = (["heel", "ball", "toe"] as const).map(
      (joint) => figure.joints[`${side}-${joint}`],
    );
    drawGroundShadow(pencil, sole, side === "right" ? 0.42 : 0.34);
  }
  return pencil.strokes();
}
