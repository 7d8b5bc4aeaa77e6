import type { Stretch } from "../body";
import type { Remark } from "../gait";
import type { View } from "../geometry";
import type { Panel } from "../sheet";
import type { Box } from "./shapes";

/** One remark pointed at in one view of the panel where it is seen. */
export interface RemarkDrawing {
  readonly remark: Remark;
  /** The number the page knows the remark by; null on screen. */
  readonly key: number | null;
  readonly panel: Panel;
  readonly view: View;
  /** The panel that the remark compares with. */
  readonly earlier: Panel;
  readonly stretchOf: (panel: Panel) => Stretch;
  /** What is seen of the view, panel units. */
  readonly window: Box;
  /** Panel units a pixel of the result. */
  readonly pixel: number;
  /** How many remarks of the same check were drawn here before. */
  readonly slot: number;
  /** What labels must not cover, panel units; each label that is placed is added. */
  readonly covered: Box[];
}
