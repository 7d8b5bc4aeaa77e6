import { type JointName, PANEL } from "../../lib/body";
import { snapToGround, walkLegLength } from "../../lib/gait";
import type { Point } from "../../lib/geometry";
import type { Panel, Sheet } from "../../lib/sheet";

/**
 * Where a joint comes to lie that is put down here: a foot that stands, put down near the ground,
 * stands on it.
 *
 * Units:   panel units, y down
 */
export function landing(sheet: Sheet, panel: Panel, joint: JointName, at: Point): Point {
  const leg = walkLegLength(sheet);
  const legUnits = leg.kind === "value" ? leg.value : PANEL.plainLeg;
  return snapToGround(at, { pose: panel.pose, weightOn: panel.weightOn, joint }, legUnits);
}
