import { Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import type { Placer } from "../hand/placer";
import type { SideFigure } from "./side-figure";

/** From where it goes over the shoulder, back and down; corners of parcels press through. */
const OUTLINE =
  "300,240 200,275 80,272 -20,268 -85,246 -165,160 -238,112 -268,40 -268,-80 -306,-160 -304,-256 -222,-340 -90,-370 40,-350 130,-290 180,-140 220,60";
const FOLDS = [
  "230,240 130,224 40,168",
  "245,212 170,150 142,66",
  "-85,235 -72,178 -26,104",
  "-226,100 -170,92 -112,66",
  "-296,-165 -238,-158 -180,-184",
  "-212,-326 -170,-272 -98,-250",
  "120,-200 80,-252 20,-272",
];
const SHADE = "-292,-200 -180,-236 -40,-262 130,-222 50,-336 -90,-360 -212,-330";

/** The Low Tide Post's mark: two waves in a ring. */
const RING = "-158,-45 -120,8 -60,0 -34,-60 -62,-112 -122,-116 -158,-70 -158,-40";
const WAVES = [
  "-142,-38 -122,-24 -97,-38 -77,-24 -54,-38",
  "-142,-76 -122,-62 -97,-76 -77,-62 -54,-76",
];

/** The sack behind the far shoulder, full of parcels. */
export function drawSack(pencil: Pencil, figure: SideFigure): void {
  const part = new Part(pencil, givingSack(figure));
  for (const fold of FOLDS) part.line(fold, thin(0.48));
  part.line(RING, thin(0.46));
  for (const wave of WAVES) part.line(wave, thin(0.5));
  part.tone(SHADE, { gap: 0.046 });
  part.form(OUTLINE, { firm: 0.68 });
}

/** What falls stretches it, what is caught squashes it: as high as it gets, so much narrower. */
export function givingSack({ sack, pose }: Pick<SideFigure, "sack" | "pose">): Placer {
  const wide = 1 - pose.drag.sack[1] * 2;
  return (ahead, up) => sack(ahead * wide, up / wide);
}
