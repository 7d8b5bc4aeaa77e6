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
  /** All that hang on the strip, in frame order: those that a remark names are found among them. */
  readonly panels: readonly P[];
  /** The ground each panel looks at: see `groundUnder`. */
  readonly stretchOf: (panel: P) => Stretch;
  /** What is carried, as a share of body mass. */
  readonly load: number;
}

/** Where a remark is drawn: its panel, the panel it is held against, and how far the ground went by between. */
export function shapeOn<P extends ShapePanel>(
  remark: Pick<Remark, "panels" | "check" | "spots" | "measured">,
  { panel, view, window, panels, stretchOf, load }: ShapePaper<P>,
): ShapeOn {
  const now = stretchOf(panel);
  const on = { panel, view, window, load, legLength: now.legLength };
  const [id] = remark.panels;
  const at = panels.findIndex((one) => one.id === id);
  const first = panels[at];
  if (first === undefined || first.id === panel.id) {
    return { ...on, earlier: null, groundShift: 0, before: null, after: null };
  }
  const byPlaces = (one: P) => (stretchOf(one).place - now.place) * now.legLength;
  const beside = (one: P | undefined) =>
    one === undefined ? null : { panel: one, groundShift: byPlaces(one) };
  const here = panels.findIndex((one) => one.id === panel.id);
  return {
    ...on,
    earlier: first,
    groundShift: bySlip(remark, first, panel, now) ?? byPlaces(first),
    before: beside(panels[at - 1]),
    after: here === -1 ? null : beside(panels[here + 1]),
  };
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
