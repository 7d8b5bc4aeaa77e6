import { SIDES } from "../body";
import {
  CHECK_IDS,
  type Ground,
  type KeptSide,
  KINDS,
  type OnPurpose,
  type OnPurposeScope,
  SHEET_YARDSTICKS,
  SUBJECTS,
  type Subject,
  type Travel,
  UNITS,
} from "../gait";
import { INKS, type InkPoint, isId, MAX_POINTS, NIBS } from "../ink";
import { POSES } from "../motion";
import { above, type Field, oneOf, orNull, record, text, whole, within } from "./field";
import type { Panel, SheetHead } from "./sheet";

const TRAVELS: readonly Travel[] = ["on-the-spot", "travelling"];
const GROUNDS: readonly Ground[] = ["by-travel", "solved"];
const MAX_SHOT_FRAME = 10_000_000; // no source, generous: a day at 24 a second has 2,073,600
const MAX_FRAME = 100_000; // no source, generous: over an hour at 24 a second

/**
 * Every field of a sheet's head. Limits are wide: they keep out what is damaged, not what is odd. A
 * limit without a source beside it has none: it is generous, many times what a walk has ever needed.
 *
 * Units:   as said beside each
 */
export const HEAD_FIELDS: {
  readonly [K in keyof SheetHead]-?: Field<Exclude<SheetHead[K], undefined>>;
} = {
  title: text(200), // characters; no source, generous: a brief asks for up to 120
  shot: text(200), // characters; no source, generous: a brief asks for up to 60
  kind: oneOf(KINDS),
  framesPerSecond: above(0, 1000), // no source, generous: film has 24, motion capture 120
  exposure: oneOf([1, 2]),
  yardstick: oneOf(SHEET_YARDSTICKS),
  travel: oneOf(TRAVELS),
  ground: oneOf(GROUNDS),
  framesPerStep: record({ left: whole(1, 1000), right: whole(1, 1000) }), // frames; no source, generous
  stepLength: above(0, 10), // leg lengths; no source, generous: two legs span less than 2
  advance: within(-10, 10), // leg lengths a frame; no source, generous: a step a frame, either way
  build: record({
    headsTall: above(0, 100), // heads; no source, generous
    legShare: above(0, 1), // of stature: a leg is a part of it
    statureMetres: orNull(above(0, 1000)), // metres; no source, generous: giants walk too
  }),
  load: within(0, 100), // shares of body mass; no source, generous: an ant carries fifty
  loop: inOrder(record({ from: whole(1, MAX_FRAME), to: whole(1, MAX_FRAME) })),
  firstFrame: whole(-MAX_SHOT_FRAME, MAX_SHOT_FRAME),
  credit: text(2000), // characters; no source, generous: a page of names
};

/** A panel's fields beside its marks, its ink, its pictures, and what of it is to redraw. */
export const PANEL_FIELDS: {
  readonly [K in keyof Omit<Panel, "id" | "marks" | "toRedraw" | "ink" | "pictures">]: Field<
    Panel[K]
  >;
} = {
  frame: whole(1, MAX_FRAME),
  hold: whole(0, 10_000), // frames; no source, generous
  pose: oneOf(POSES),
  weightOn: orNull(oneOf(SIDES)),
  place: orNull(within(-100_000, 100_000)), // leg lengths; no source, generous
};

export const TO_REDRAW_FIELD: Field<Panel["toRedraw"]> = record({
  side: oneOf([true, false]),
  front: oneOf([true, false]),
});

export const ID_FIELD: Field<string> = {
  expected: "1 to 63 letters, digits, - or _",
  fits: isId,
};

const FAR_READING = 1_000_000; // of any unit; no source, generous
const SCOPES = [
  record({ kind: oneOf(["panel"]), panel: ID_FIELD, side: orNull(oneOf(SIDES)) }),
  record({ kind: oneOf(["side"]), side: oneOf(SIDES) }),
  record({ kind: oneOf(["walk"]) }),
] satisfies readonly Field<OnPurposeScope>[];

/** What each entry of what is kept on purpose has beside its id. */
export const ON_PURPOSE_FIELDS: {
  readonly [K in keyof Omit<OnPurpose, "id" | "subject" | "sides">]: Field<OnPurpose[K]>;
} = {
  check: oneOf(CHECK_IDS),
  scope: {
    expected: SCOPES.map(({ expected }) => expected).join(" or "),
    fits: (value): value is OnPurposeScope => SCOPES.some(({ fits }) => fits(value)),
  },
  reason: text(500), // characters; no source, generous: a footnote of five lines
  measured: record({
    value: within(-FAR_READING, FAR_READING),
    plusMinus: within(0, FAR_READING),
    unit: oneOf(UNITS),
  }),
  by: text(40), // characters, as long as a name may be
};

/** What an entry may have beside: which of the readings it is of, where its check has several. */
export const SUBJECT_FIELD: Field<Subject> = oneOf(SUBJECTS);

const KEPT_SIDE: Field<KeptSide> = record({
  side: orNull(oneOf(SIDES)),
  value: within(-FAR_READING, FAR_READING),
});

/** What an entry for the whole walk may have beside: at most one value of each side, and of none. */
export const KEPT_SIDES_FIELD: Field<readonly KeptSide[]> = {
  expected: `up to 3 of ${KEPT_SIDE.expected}`,
  fits: (value): value is readonly KeptSide[] =>
    Array.isArray(value) && value.length <= 3 && value.every(KEPT_SIDE.fits),
};

/** A mark as the document and the file hold it: one value, so x and y never part in a merge. */
export type MarkTriple = readonly [x: number, y: number, precision: number];

const FAR = 131_071; // panel units; as far out as ink is kept

export const MARK_FIELD: Field<MarkTriple> = {
  expected: `[x, y, precision], numbers from -${FAR} to ${FAR}, precision not below 0`,
  fits: (value): value is MarkTriple => {
    if (!(Array.isArray(value) && value.length === 3)) return false;
    const [x, y, precision] = value;
    return isNear(x) && isNear(y) && isNear(precision) && precision >= 0;
  },
};

/** A picture under a view as the document holds it: one value, so its place never parts in a merge. */
export type PictureTuple = readonly [
  picture: string,
  x: number,
  y: number,
  width: number,
  height: number,
  dim: number,
];

const PICTURE_ID = /^[A-Za-z0-9_-]{43}$/; // 32 bytes of SHA-256 in base64url (RFC 4648)
/** Panel units; our own choice: smaller is lost under a pencil, larger is a few pixels of it. */
export const PICTURE_SIZE = { least: 24, most: 14_400 } as const;
const LENGTH = within(PICTURE_SIZE.least, PICTURE_SIZE.most);
const SHARE = within(0, 1);

export const PICTURE_FIELD: Field<PictureTuple> = {
  expected:
    `[picture, x, y, width, height, dim], the picture by its 43 characters, ` +
    `x and y numbers from -${FAR} to ${FAR}, ` +
    `width and height ${PICTURE_SIZE.least} to ${PICTURE_SIZE.most}, dim 0 to 1`,
  fits: (value): value is PictureTuple => {
    if (!(Array.isArray(value) && value.length === 6)) return false;
    const [picture, x, y, width, height, dim] = value;
    return (
      typeof picture === "string" &&
      PICTURE_ID.test(picture) &&
      isNear(x) &&
      isNear(y) &&
      LENGTH.fits(width) &&
      LENGTH.fits(height) &&
      SHARE.fits(dim)
    );
  },
};

export const POINT_FIELD: Field<InkPoint> = {
  expected: `[x, y, pressure], x and y numbers from -${FAR} to ${FAR}, pressure 0 to 1`,
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
