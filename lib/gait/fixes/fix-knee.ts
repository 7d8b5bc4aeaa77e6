import type { Point } from "../../geometry";
import type { Remark } from "../finding";
import type { Study } from "../study";
import { movedFromSide } from "./limb-lengths";
import { limbSeen } from "./limb-of";
import { movedPanel, type Proposal } from "./proposal";

/** A knee that bends back: mirrored over the line from hip to ankle, so that both bones keep their lengths. */
export function fixKnee(study: Study, { panels, side }: Remark): readonly Proposal[] {
  const panel = study.walk.panels.find(({ id }) => id === panels[0]);
  if (panel === undefined || side === null) return [];
  const { names, root, middle, end } = limbSeen(study, panel, side, "leg");
  if (root === null || middle === null || end === null) return [];
  const marks = movedFromSide(panel.marks, [[names.middle, mirrored(middle, root, end)]]);
  return [movedPanel(panel, { marks, short: [] }, `Bend the ${side} knee forward`, study.leg)];
}

/** A point on the other side of a line, as far from it. */
function mirrored(point: Point, from: Point, to: Point): Point {
  const way = { x: to.x - from.x, y: to.y - from.y };
  const square = way.x ** 2 + way.y ** 2;
  if (square === 0) return point;
  const along = ((point.x - from.x) * way.x + (point.y - from.y) * way.y) / square;
  return {
    x: 2 * (from.x + along * way.x) - point.x,
    y: 2 * (from.y + along * way.y) - point.y,
  };
}
