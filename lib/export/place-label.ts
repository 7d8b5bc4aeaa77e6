import type { Point } from "../geometry";
import type { Path } from "./point-at/shape";
import type { Box } from "./shapes";

/** What a label keeps clear of. Units: any one unit, as the label's. */
export interface LabelGround {
  /** Labels and signs that stand already. */
  readonly taken: readonly Box[];
  /** The figure and what points at it: words should not lie across them. */
  readonly lines: readonly Path[];
  readonly frame: Box;
}

const COLUMNS = 5; // half widths to either side
const ROWS = 24; // steps up and down
const STEP = 0.6; // of a label's height
const UNDER = 0.3; // of a label's height, between it and what it belongs to
const FAR = 7; // steps: words farther off are no longer seen to belong, and rather lie across the figure
const ASIDE = 1.6; // half a width aside counts as far as this many steps down

/** How far from the place wished for, in half widths and in steps; the nearest come first. */
const OFFSETS: readonly Point[] = Array.from({ length: 2 * COLUMNS + 1 }, (_, column) =>
  Array.from({ length: 2 * ROWS + 1 }, (__, row) => ({ x: column - COLUMNS, y: row - ROWS })),
)
  .flat()
  .toSorted((a, b) => away(a) - away(b));

function away({ x, y }: Point): number {
  return Math.hypot(x * ASIDE, y) + (y < 0 ? 0.1 : 0); // below rather than above
}

/**
 * Where a label of a size may stand: as near as can be under the point it belongs to, inside the frame, on
 * no other label, and across nothing that is drawn where there is room for that. Null where others leave it
 * no place.
 *
 * Units:   any one unit, y down
 */
export function placeLabel(
  size: { readonly width: number; readonly height: number },
  at: Point,
  ground: LabelGround,
): Box | null {
  const { taken, lines, frame } = ground;
  const wish = inside({ x: at.x - size.width / 2, y: at.y + UNDER * size.height, ...size }, frame);
  let beside: Box | null = null;
  for (const offset of OFFSETS) {
    if (beside !== null && away(offset) > FAR) return beside;
    const box = {
      ...size,
      x: wish.x + (offset.x * size.width) / 2,
      y: wish.y + offset.y * size.height * STEP,
    };
    if (!isInside(box, frame) || taken.some((other) => touch(box, other))) continue;
    if (lines.every((line) => !crosses(box, line))) return box;
    beside ??= box;
  }
  return beside;
}

function inside(box: Box, frame: Box): Box {
  const clamp = (value: number, least: number, most: number) =>
    Math.max(least, Math.min(value, most));
  return {
    ...box,
    x: clamp(box.x, frame.x, frame.x + frame.width - box.width),
    y: clamp(box.y, frame.y, frame.y + frame.height - box.height),
  };
}

function isInside(box: Box, frame: Box): boolean {
  return (
    box.x >= frame.x &&
    box.y >= frame.y &&
    box.x + box.width <= frame.x + frame.width &&
    box.y + box.height <= frame.y + frame.height
  );
}

/** Whether two boxes share more than an edge. Units: any one unit. */
export function touch(one: Box, other: Box): boolean {
  return (
    one.x < other.x + other.width &&
    other.x < one.x + one.width &&
    one.y < other.y + other.height &&
    other.y < one.y + one.height
  );
}

function crosses(box: Box, path: Path): boolean {
  return path.some((to, index) => {
    const from = path[index - 1];
    return from !== undefined && segmentCrosses(box, from, to);
  });
}

/** Whether a straight line runs through a box. Source: Liang & Barsky (1984), ACM Trans. Graph. 3:1. */
function segmentCrosses({ x, y, width, height }: Box, from: Point, to: Point): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  let [enters, leaves] = [0, 1];
  const sides = [
    [-dx, from.x - x],
    [dx, x + width - from.x],
    [-dy, from.y - y],
    [dy, y + height - from.y],
  ] as const;
  for (const [speed, room] of sides) {
    if (speed === 0) {
      if (room < 0) return false;
    } else if (speed < 0) enters = Math.max(enters, room / speed);
    else leaves = Math.min(leaves, room / speed);
  }
  return enters <= leaves;
}
