import { Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import { givingSack } from "../side/sack-side";
import type { FrontFigure } from "./front-figure";

const OUTLINE =
  "0,290 100,276 156,238 220,176 262,84 266,-40 306,-140 286,-246 204,-330 60,-364 -100,-340 -200,-260 -250,-100 -240,80 -160,220";
const FOLDS = [
  "60,262 104,204 124,120",

  "252,82 204,62 172,20",
  "292,-140 236,-148 192,-190",
  "204,-306 162,-262 100,-250",
];
const SHADE = "100,-300 200,-200 268,-50 300,-140 260,-276 140,-346";

/** What is seen of the sack past his left shoulder. */
export function drawSackFront(pencil: Pencil, figure: FrontFigure): void {
  const part = new Part(pencil, givingSack(figure));
  for (const fold of FOLDS) part.line(fold, thin(0.48));
  part.tone(SHADE);
  part.form(OUTLINE, { firm: 0.7 });
}
