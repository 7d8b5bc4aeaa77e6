import { SIDES } from "../../../body";
import { drawGroundShadow } from "../hand/ground-shadow";
import { type Drawn, Pencil } from "../hand/pencil";
import type { Figure } from "../pose/figure";
import { drawFreeArmFront, drawHoldingArmFront } from "./arm-front";
import { drawCoatFront } from "./coat-front";
import { frontOf } from "./front-figure";
import { drawHeadFront } from "./head-front";
import { drawLegFront } from "./leg-front";
import { drawSackFront } from "./sack-front";
import { drawScarfFront } from "./scarf-front";
import { drawUnderFront } from "./under-front";

/** The way to the light: above, on his right. */
const LIGHT = { x: -0.5, y: 0.86 };

/** Brindle from ahead, near parts before far ones. Units: panel units */
export function drawBrindleFront(figure: Figure, seed: number): readonly Drawn[] {
  const pencil = new Pencil(seed, LIGHT);
  const front = frontOf(figure);
  drawUnderFront(pencil, front);
  drawHeadFront(pencil, front);
  drawScarfFront(pencil, front);
  drawHoldingArmFront(pencil, front);
  drawFreeArmFront(pencil, front);
  drawCoatFront(pencil, front);
  const leading = front.ahead("left-toe") > front.ahead("right-toe") ? "left" : "right";
  drawLegFront(pencil, front, leading, false);
  drawLegFront(pencil, front, leading === "left" ? "right" : "left", true);
  drawSackFront(pencil, front);
  for (const side of SIDES) {
    const sole = (["heel", "toe"] as const).map((joint) => front.of(side, joint));
    drawGroundShadow(pencil, sole, side === leading ? 0.42 : 0.34);
  }
  return pencil.strokes();
}
