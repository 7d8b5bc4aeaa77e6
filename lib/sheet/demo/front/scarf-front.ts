import { dark, Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import type { FrontFigure } from "./front-figure";

/** The scarf from ahead; its end hangs over the breast and sways against the hips. */
export function drawScarfFront(pencil: Pencil, { chest, pose }: FrontFigure): void {
  const part = new Part(pencil, chest);
  part.line("-112,42,80 0,-5,120 112,38,80", thin(0.5));
  for (const stripe of [
    "-116,24,70 -92,8,90 -84,-16,100",
    "-52,8,110 -40,-18,120 -44,-46,130",
    "22,2,120 26,-26,125 16,-56,130",
    "92,24,90 84,-4,95 70,-34,100",
  ]) {
    part.line(stripe, dark(11, 0.8));
  }
  part.form(
    "-130,60,40 -144,20,50 -104,-42,100 0,-72,130 104,-48,100 144,14,50 130,60,40 0,90,60",
    { firm: 0.64 },
  );
  const s = pose.hips[2] * 0.6;
  for (const a of [-0.085, -0.065, -0.045]) {
    part.line(
      [
        [a + s * 1.8, -0.203, 0.18],
        [a + s * 1.9, -0.218, 0.18],
        [a + s * 2, -0.234, 0.18],
      ],
      thin(0.5, 3.6),
    );
  }
  part.form(
    [
      [-0.075, -0.05, 0.12],
      [-0.09 + s, -0.13, 0.17],
      [-0.095 + s * 1.8, -0.2, 0.18],
      [-0.035 + s * 1.8, -0.205, 0.18],
      [-0.026 + s, -0.13, 0.17],
      [-0.015, -0.06, 0.13],
    ],
    { width: 5.4, firm: 0.62 },
  );
}
