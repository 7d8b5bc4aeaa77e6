import { placedFigure } from "../../lib/gait";
import { type Panel, type PassOn, placeMarks, type Sheet, walkOf } from "../../lib/sheet";
import type { Room } from "../_room";

/** A whole figure for a panel's pose, in both views; the load that is marked stays. */
export function planFigure(sheet: Sheet, to: Panel): PassOn {
  return passingOf(figureFor(sheet, to), to);
}

/** Puts the figure on the panel, in one edit. The ink that is there is what it will be fitted to. */
export function putFigure({ drawing }: Room, sheet: Sheet, to: Panel): PassOn {
  const figure = figureFor(sheet, to);
  if (figure.kind === "figure") placeMarks(drawing, to.id, figure.marks);
  return passingOf(figure, to);
}

type Figure = ReturnType<typeof placedFigure>;

function figureFor(sheet: Sheet, to: Panel): Figure {
  return placedFigure(walkOf(sheet), to.id, sheet.head.yardstick);
}

function passingOf(figure: Figure, to: Panel): PassOn {
  if (figure.kind === "cannot-tell") return figure;
  return { kind: "passing", to: to.id, marks: figure.marks, ink: [] };
}
