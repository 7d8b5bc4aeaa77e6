import { PANEL } from "../body";
import type { View } from "../geometry";
import { boundsOf } from "../ink";
import type { Sheet } from "../sheet";
import type { Box } from "./shapes";

const AIR = 44; // panel units round the outermost ink
const UNDER_GROUND = 104; // panel units kept below the ground line, for ticks and slips
const MIN_WIDTH = 480; // panel units: a lone figure standing still keeps some air
const MIN_HEIGHT = 900;

/**
 * The part of the views that a print shows: the same for all panels, so that heights compare from
 * one to the next, as narrow and as low as all their ink and marks allow. The side and the front
 * view share their width. An empty sheet shows a plain figure's room.
 *
 * Units:   panel units
 */
export function viewWindows(sheet: Sheet): Readonly<Record<View, Box>> {
  const side = extent(sheet, "side");
  const front = extent(sheet, "front");
  const half = Math.max(side.half, front.half);
  return { side: windowOf(half, side.top), front: windowOf(half, front.top) };
}

function windowOf(half: number, top: number): Box {
  const bottom = PANEL.groundY + UNDER_GROUND;
  return { x: PANEL.width / 2 - half, y: top, width: 2 * half, height: bottom - top };
}

/** Half the width about the view's middle, and the top, that hold everything drawn in a view. */
function extent(sheet: Sheet, view: View): { half: number; top: number } {
  let half = MIN_WIDTH / 2 - AIR;
  let top = PANEL.groundY + UNDER_GROUND - MIN_HEIGHT + AIR;
  for (const panel of sheet.panels) {
    for (const { left, right, y } of thingsIn(panel, view)) {
      half = Math.max(half, PANEL.width / 2 - left, right - PANEL.width / 2);
      top = Math.min(top, y);
    }
  }
  return { half: Math.min(PANEL.width / 2, half + AIR), top: Math.max(0, top - AIR) };
}

function thingsIn(panel: Sheet["panels"][number], view: View) {
  const ink = panel.ink[view]
    .map((stroke) => boundsOf(stroke))
    .filter(({ left }) => Number.isFinite(left))
    .map(({ left, right, top }) => ({ left, right, y: top }));
  const marks = Object.values(panel.marks[view]).map(({ x, y }) => ({ left: x, right: x, y }));
  return [...ink, ...marks];
}
