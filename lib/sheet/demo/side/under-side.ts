import { curve } from "../hand/curve";
import { oval } from "../hand/oval";
import type { Pencil } from "../hand/pencil";
import { placed } from "../hand/placer";
import type { SideFigure } from "./side-figure";

const UNDER = { nib: "under", width: 7, firm: 0.42, through: true } as const;

/** What he was built on: line of action, head, ribs, pelvis, limbs. */
export function drawUnderSide(pencil: Pencil, figure: SideFigure): void {
  const { chest, waist, hips, head, pose } = figure;
  const side = pose.weightOn ?? "right";
  const action = [
    head(-0.03, 0.25),
    head(-0.05, 0),
    chest(-0.02, -0.1),
    waist(0, 0),
    figure.of(side, "hip"),
    figure.of(side, "knee"),
    figure.of(side, "ankle"),
  ];
  pencil.line(curve(action), { ...UNDER, width: 9, firm: 0.5 });
  pencil.line(oval(head, [0, 0.01], [0.148, 0.15]), UNDER);
  pencil.line(curve(placed(head, "-130,30 0,18 130,30")), { ...UNDER, width: 5, firm: 0.28 });
  pencil.line(oval(chest, [-0.01, -0.17], [0.145, 0.19]), UNDER);
  pencil.line(oval(hips, [0, 0.03], [0.15, 0.105]), UNDER);
  for (const limb of ["left", "right"] as const) {
    pencil.line(
      curve([
        figure.of(limb, "hip"),
        figure.of(limb, "knee"),
        figure.of(limb, "ankle"),
        figure.of(limb, "ball"),
      ]),
      { ...UNDER, width: 6, firm: 0.32 },
    );
  }
}
