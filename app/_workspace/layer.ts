import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";

/**
 * What every layer of a paper gets. A paper is one view of one panel on screen; layers lie over
 * each other, each filling it: ink, marks, remarks, the others' pencils.
 */
export interface LayerProps {
  readonly panel: Panel;
  readonly view: View;
  /** The paper's width in CSS pixels; its scale is this over the 720 units of a view. */
  readonly width: number;
  /** This person may change the drawing here. */
  readonly mayDraw: boolean;
}
