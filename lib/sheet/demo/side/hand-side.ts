import { Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import type { Placer } from "../hand/placer";

/** Up is toward the elbow, ahead the thumb's side. */
const HAND =
  "34,20 38,-20 44,-60 50,-100 46,-132 26,-151 4,-150 -18,-145 -36,-124 -46,-90 -46,-50 -40,-20 -36,20";
const THUMB = "33,-28 54,-50 64,-86 57,-114 44,-112 38,-88 28,-66";
const FINGERS = ["30,-106 35,-128 26,-149", "6,-98 11,-124 3,-147", "-18,-92 -14,-118 -20,-141"];

/** A right hand seen from outside: the thumb ahead, the fingers curled away from us. */
export function drawRelaxedHand(pencil: Pencil, at: Placer): void {
  const part = new Part(pencil, at);
  const thumb = part.path(THUMB);
  pencil.line(thumb, thin(0.64, 5));
  pencil.solid(thumb);
  for (const finger of FINGERS) part.line(finger, thin(0.48, 3.6));
  part.form(HAND, { width: 5.4, firm: 0.66 });
}

/** A left fist round the strap, seen from the thumb's side. */
export function drawFist(part: Part, firm: number): void {
  part.line("26,62 54,36 42,10", thin(0.52));
  part.line("24,32 52,10 38,-14", thin(0.52));
  part.line("-44,18 -16,30 8,24", thin(0.5));
  part.form("-50,-20 -52,30 -20,76 30,84 64,52 68,12 52,-26 12,-42", { width: 5.4, firm });
}
