import type { Stretch } from "../body";
import type { Remark } from "../gait";
import type { View } from "../geometry";
import type { ShapeOn, ShapePanel } from "./point-at/shape";
import type { Box } from "./shapes";

/** The paper that a remark is drawn on, and where the others are found. */
export interface ShapePaper<P extends ShapePanel> {
  readonly panel: P;
  readonly view: View;
  readonly window: Box;
  readonly panelOf: (id: string) => P | undefined;
  /** The ground each panel looks at: see `groundUnder`. */
  readonly stretchOf: (panel: P) => Stretch;
}

/** Where a remark is drawn: its panel, the panel it is held against, and how far the ground went by between. */
export function shapeOn<P extends ShapePanel>(
  { panels }: Pick<Remark, "panels">,
  { panel, view, window, panelOf, stretchOf }: ShapePaper<P>,
): ShapeOn {
  const first = panels[0] === undefined ? undefined : panelOf(panels[0]);
  if (first === undefined || first.id === panel.id) {
    return { panel, view, window, earlier: null, groundShift: 0 };
  }
  const [then, now] = [stretchOf(first), stretchOf(panel)];
  const groundShift = (then.place - now.place) * now.legLength;
  return { panel, view, window, earlier: first, groundShift };
}
