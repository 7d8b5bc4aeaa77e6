import { dark, Part, thin } from "../hand/part";
import type { Pencil } from "../hand/pencil";
import type { SideFigure } from "./side-figure";

/** A scarf wound round the neck; its end hangs on the chest and swings a little late. */
export function drawScarf(pencil: Pencil, { chest, pose }: SideFigure): void {
  const part = new Part(pencil, chest);
  part.line("-102,26 0,52 112,14", thin(0.5));
  for (const stripe of [
    "-92,56 -78,34 -84,4",
    "-30,88 -14,62 -14,44",
    "44,80 58,56 52,36",
    "-34,-34 -8,-6 8,14",
    "44,-38 62,-16 72,4",
  ]) {
    part.line(stripe, dark(11, 0.8));
  }
  part.form("-122,30 -100,82 -20,100 80,72 134,30 132,-20 70,-52 -40,-46 -114,-14", { firm: 0.66 });
  const s = pose.drag.scarf;
  for (const a of [0.1, 0.118, 0.138]) {
    part.line(
      [
        [a + s * 1.6, -0.203],
        [a + s * 1.8, -0.218],
        [a + s * 2, -0.236],
      ],
      thin(0.5, 3.6),
    );
  }
  part.form(
    [
      [0.06, -0.03],
      [0.076 + s * 0.5, -0.11],
      [0.092 + s * 1.6, -0.205],
      [0.15 + s * 1.6, -0.2],
      [0.14 + s * 0.5, -0.1],
      [0.118, -0.02],
    ],
    { width: 5.4, firm: 0.6 },
  );
}
