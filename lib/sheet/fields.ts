import { SIDES } from "../body";
import { KINDS, type Travel, YARDSTICKS } from "../gait";
import { INKS, type InkPoint, isId, MAX_POINTS, NIBS } from "../ink";
import { POSES } from "../motion";
import { above, type Field, oneOf, orNull, record, text, whole, within } from "./field";
import type { Panel, SheetHead } from "./sheet";

const TRAVELS: readonly Travel[] = ["on-the-spot", "travelling"];
const MAX_FRAME = 100_000; // over an hour at 24 a second

/** Every field of a sheet's head. Limits are wide: they keep out what is damaged, not what is odd. */
export const HEAD_FIELDS: { readonly [K in keyof SheetHead]: Field<SheetHead[K]> } = {
  title: text(200),
  shot: text(200),
  kind: oneOf(KINDS),
  framesPerSecond: above(0, 1000),
  exposure: oneOf([1, 2]),
  yardstick: oneOf(YARDSTICKS),
  travel: oneOf(TRAVELS),
  framesPerStep: record({ left: whole(1, 1000), right: whole(1, 1000) }),
  stepLength: above(0, 10),
  advance: within(-10, 10),
  build: record({
    headsTall: above(0, 100),
    legShare: above(0, 1),
    statureMetres: orNull(above(0, 1000)),
  }),
  loop: inOrder(record({ from: whole(1, MAX_FRAME), to: whole(1, MAX_FRAME) })),
  credit: text(2000),
};

/** A panel's fields beside its marks and its ink. */
export const PANEL_FIELDS: {
  readonly [K in keyof Omit<Panel, "id" | "marks" | "ink">]: Field<Panel[K]>;
} = {
  frame: whole(1, MAX_FRAME),
  hold: whole(0, 10_000),
  pose: oneOf(POSES),
  weightOn: orNull(oneOf(SIDES)),
  place: orNull(within(-100_000, 100_000)),
};

export const ID_FIELD: Field<string> = {
  expected: "1 to 63 letters, digits, - or _",
  fits: isId,
};

/** A mark as the document and the file hold it: one value, so x and y never part in a merge. */
export type MarkTriple = readonly [x: number, y: number, precision: number];

const FAR = 131_071; // panel units; as far out as ink is kept

export const MARK_FIELD: Field<MarkTriple> = {
  expected: "[x, y, precision] finite numbers",
  fits: (value): value is MarkTriple => {
    if (!(Array.isArray(value) && value.length === 3)) return false;
    const [x, y, precision] = value;
    return isNear(x) && isNear(y) && isNear(precision) && precision >= 0;
  },
};

export const POINT_FIELD: Field<InkPoint> = {
  expected: "[x, y, pressure] finite numbers, pressure 0 to 1",
  fits: (value): value is InkPoint => {
    if (!(Array.isArray(value) && value.length === 3)) return false;
    const [x, y, pressure] = value;
    return isNear(x) && isNear(y) && isNear(pressure) && pressure >= 0 && pressure <= 1;
  },
};

/** A stroke's fields beside its id and its points. */
export const STROKE_FIELDS = {
  nib: oneOf(NIBS),
  colour: oneOf(INKS),
  width: within(1 / 16, 4096),
  z: whole(-(2 ** 24), 2 ** 24),
} as const;

export { MAX_POINTS };

/** A loop ends at or after its start. (The one rule of these that JSON Schema cannot say.) */
function inOrder(loop: Field<SheetHead["loop"]>): Field<SheetHead["loop"]> {
  return {
    expected: `${loop.expected}, from not after to`,
    fits: (value): value is SheetHead["loop"] => loop.fits(value) && value.from <= value.to,
  };
}

function isNear(value: unknown): value is number {
  return typeof value === "number" && Math.abs(value) <= FAR;
}
