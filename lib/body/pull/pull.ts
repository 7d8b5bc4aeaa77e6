import type { Point, View } from "../../geometry";
import type { JointName, Side } from "../joint";
import type { ViewMarks } from "../mark";

/** A joint taken hold of in one view and pulled to a place. */
export interface Pull {
  readonly view: View;
  readonly joint: JointName;
  /** Panel units, y down. */
  readonly to: Point;
  /** The feet that stand: their marks stay. */
  readonly pinned: readonly Side[];
  /**
   * Of a pull from ahead, the side view's marks where they are: they tell how long a bone is that is
   * seen foreshortened. Without them a bone is never seen longer than it is drawn.
   */
  readonly side?: ViewMarks;
}
