import type { View } from "../../lib/geometry";

const strokes = (count: number) => (count === 1 ? "1 stroke" : `${count} strokes`);

/** Gathering strokes, and what may be done with them. */
export const gather = {
  name: "Gathered",
  way: "How to gather",
  lasso: "Lasso",
  box: "Box",
  all: "Gather all of this view",
  none: "Draw round strokes, or tap one.",
  noPanel: "Tap a panel to take it in hand.",
  nothing: "Nothing is drawn in this view.",
  keys: "Arrows move, + − scale, , . turn; Shift adds.",
  count: (count: number) => `${strokes(count)} gathered`,
  bench: (view: View, count: number) =>
    count === 0
      ? `Gather strokes, ${view} view`
      : `${strokes(count)} gathered, ${view} view: arrow keys move them, plus and minus scale, comma and full stop turn, Delete rubs them out`,
  colour: "Colour",
  graphite: "Graphite",
  blue: "Blue",
  shape: "Shape",
  larger: "Larger",
  smaller: "Smaller",
  turnLeft: "Turn left",
  turnRight: "Turn right",
  to: "To",
  paper: (frame: number, pose: string, view: string) => `${frame} ${pose}, ${view}`,
  move: "Take there",
  hold: "What is gathered",
  add: "Add",
  remove: "Rub out",
  letGo: "Let go",
} as const;
