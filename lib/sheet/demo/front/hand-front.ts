import { Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import type { Placer } from "../hand/placer";

/** Thumb toward us; the fingers curl under. */
const HAND = "-36,20 -46,-30 -50,-80 -40,-126 -12,-147 18,-141 36,-108 40,-60 34,-20 34,20";
const THUMB = "2,-24 30,-40 42,-78 31,-114 13,-111 8,-74";

/** A right hand that hangs, shorter and broader the more it points at us (`near`, 0..1). */
export function drawHangingHand(pencil: Pencil, at: Placer, near: number): void {
  const part = new Part(pencil, (aside, up) =>
    at(aside * (1 + near * 0.12), up * (1 - near * 0.35)),
  );
  const thumb = part.path(THUMB);
  pencil.line(thumb, thin(0.62, 5));
  pencil.solid(thumb);
  for (const finger of ["-30,-98 -26,-118 -28,-140", "-10,-100 -6,-120 -8,-142"])
    part.line(finger, thin(0.48, 3.6));
  part.form(HAND, { width: 5.4, firm: 0.64 });
}

/** Four fingers round the strap, the thumb along it. */
export function drawFistFront(part: Part): void {
  for (const finger of ["-50,8 -22,15 8,10", "-52,32 -22,39 8,34", "-46,56 -20,63 8,58"])
    part.line(finger, thin(0.52));
  part.line("50,30 30,60 12,78", thin(0.56, 4.4));
  part.form("-46,-20 -61,6 -59,34 -51,64 -24,85 16,87 48,65 57,20 46,-25 0,-35", {
    width: 5.4,
    firm: 0.66,
  });
}
