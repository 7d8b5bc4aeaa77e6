import { curve } from "../hand/curve";
import { oval } from "../hand/oval";
import type { Pencil } from "../hand/pencil";
import type { FrontFigure } from "./front-figure";

const UNDER = { nib: "under", width: 7, firm: 0.42, through: true } as const;

/** What he was built on, from ahead. */
export function drawUnderFront(pencil: Pencil, figure: FrontFigure): void {
  const { chest, hips, head, waist, pose } = figure;
  const side = pose.weightOn ?? "right";
  const middle = { x: -pose.hips[2], y: pose.hips[1] };
  pencil.line(
    curve([
      head(0, 0.27),
      head(0, 0.2),
      chest(0, -0.02),
      chest(0, -0.16),
      waist(0, 0),
      middle,
      figure.of(side, "knee"),
      figure.of(side, "ankle"),
    ]),
    { ...UNDER, width: 9, firm: 0.5 },
  );
  pencil.line(oval(head, [0, 0.01], [0.136, 0.15]), UNDER);
  pencil.line(oval(chest, [0, -0.17], [0.17, 0.19]), UNDER);
  pencil.line(oval(hips, [0, 0.03], [0.16, 0.1]), UNDER);
  pencil.line(curve([chest(-0.22, -0.09), chest(0, -0.07), chest(0.22, -0.09)]), {
    ...UNDER,
    firm: 0.34,
  });
  for (const limb of ["left", "right"] as const) {
    pencil.line(
      curve([
        figure.of(limb, "hip"),
        figure.of(limb, "knee"),
        figure.of(limb, "ankle"),
        figure.of(limb, "toe"),
      ]),
      { ...UNDER, width: 6, firm: 0.32 },
    );
  }
}
