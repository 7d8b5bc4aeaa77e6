import type { Remark } from "../../lib/gait";
import type { View } from "../../lib/geometry";
import type { Panel } from "../../lib/sheet";

/** What points at a remark on a drawing gets. */
export interface PointerProps {
  readonly remark: Remark;
  readonly panel: Panel;
  readonly view: View;
  /** How many panel units one pixel of the screen is: lines and figures keep their size. */
  readonly pixel: number;
  /** This is the remark that the margin is pointing out. */
  readonly pointed: boolean;
}

/** A paper narrower than this many pixels has no room for figures beside an arrow. */
export const LEAST_LABELLED_PX = 78;
