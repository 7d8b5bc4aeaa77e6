import { markOf, type Stretch } from "../body";
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
  remark: Pick<Remark, "panels" | "check" | "spots" | "measured">,
  { panel, view, window, panelOf, stretchOf }: ShapePaper<P>,
): ShapeOn {
  const [id] = remark.panels;
  const first = id === undefined ? undefined : panelOf(id);
  if (first === undefined || first.id === panel.id) {
    return { panel, view, window, earlier: null, groundShift: 0 };
  }
  const [then, now] = [stretchOf(first), stretchOf(panel)];
  const byPlaces = (then.place - now.place) * now.legLength;
  const groundShift = bySlip(remark, first, panel, now) ?? byPlaces;
  return { panel, view, window, earlier: first, groundShift };
}

/**
 * How far the ground went by under a foot that slips, as its remark has it: where places were solved, the
 * foot was measured against the rest, and not against the places that it helped to solve.
 */
function bySlip(
  { check, spots, measured }: Pick<Remark, "check" | "spots" | "measured">,
  earlier: ShapePanel,
  panel: ShapePanel,
  { legLength }: Stretch,
): number | null {
  const joint = spots.at(-1)?.joints[0];
  if (check !== "slide" || joint === undefined) return null;
  const was = markOf(earlier.marks.side, joint);
  const is = markOf(panel.marks.side, joint);
  return was === null || is === null ? null : is.x - was.x - measured.value * legLength;
}
