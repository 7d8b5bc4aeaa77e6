import { bonesOf } from "../body";
import type { Remark } from "../gait";
import { LABEL } from "./label-size";
import { LETTER_HEIGHT, lettersApart } from "./letters-apart";
import { placeLabel, touch } from "./place-label";
import type { Path, RemarkShape, ShapeOn } from "./point-at/shape";
import { remarkShape } from "./remark-shape";
import type { Box } from "./shapes";
import { type Face, measureShipped } from "./typeface";

/** The remarks to point at in one view of a panel. */
export interface RemarksInView<R extends { readonly remark: Remark }> {
  /** Gravest first. */
  readonly remarks: readonly R[];
  readonly on: (remark: Remark) => ShapeOn;
  readonly window: Box;
  /** Panel units a pixel of the result. */
  readonly pixel: number;
  readonly face: Face;
  /** So many are drawn whole, the others as a sign with a number. */
  readonly mostWhole: number;
  /** What stands beside each; empty where there is no room for words. */
  readonly words: (one: R, whole: boolean) => LabelWords;
  /** Places that labels keep clear of, panel units. */
  readonly keepClear?: readonly Box[];
}

/** An amount, or a remark's number behind its level's sign. */
export interface LabelWords {
  readonly text: string;
  readonly numbered: boolean;
}

/** A remark with its drawing and the place of its words. Units: panel units. */
export interface LaidRemark<R> extends LabelWords {
  readonly one: R;
  readonly shape: RemarkShape;
  readonly whole: boolean;
  readonly box: Box;
}

/** A ring's radius, pixels. */
export const RING_PX = 6;

/** A letter at its joint, pixels. */
export const LETTER_PX = 13;

/**
 * Lays out what points at the remarks of one view: the gravest are drawn whole, the others as small signs
 * with their number. No words lie on others, and on the figure only where there is no other room.
 *
 * Units:   panel units
 */
export function layOutRemarks<R extends { readonly remark: Remark }>(
  view: RemarksInView<R>,
): readonly LaidRemark<R>[] {
  const { remarks, on, window, pixel, face, mostWhole, words, keepClear = [] } = view;
  const found = remarks.flatMap((one) => {
    const at = on(one.remark);
    const shape = remarkShape(one.remark, at);
    if (shape === null) return [];
    const letters = lettersApart(shape.letters, LETTER_PX * pixel);
    return [{ one, shape: { ...shape, letters }, marks: at.panel.marks[at.view] }];
  });
  const legible = lettersClear(
    found.slice(0, mostWhole).map(({ shape }) => shape),
    pixel,
  );
  const shaped = found.map((one, nth) => ({ ...one, shape: legible[nth] ?? one.shape }));
  const drawn = shaped.slice(0, mostWhole);
  const signs = drawn.flatMap(({ shape }) => [
    ...ringBoxes(shape, pixel),
    ...letterBoxes(shape, pixel),
  ]);
  const taken = [...keepClear, ...signs];
  const figure: Path[] = bonesOf(shaped[0]?.marks ?? {}).map(({ start, end }) => [start, end]);
  const pointers = drawn.flatMap(({ shape }) => linesOf(shape));
  const lines = [...figure, ...pointers];
  return shaped.map(({ one, shape }, index) => {
    const whole = index < mostWhole;
    const label = (said: LabelWords) => {
      const aside = (2 * LABEL.aside + (said.numbered ? LABEL.sign : 0)) * pixel;
      const width = measureShipped(said.text, face) + aside;
      const size = { width, height: face.size * LABEL.height };
      const box =
        said.text === "" ? null : placeLabel(size, shape.label, { taken, lines, frame: window });
      return box === null ? null : { ...said, box };
    };
    const placed = label(words(one, whole)) ?? label(words(one, false)) ?? UNLABELLED;
    if (placed.text !== "") taken.push(placed.box);
    return { one, shape, whole, ...placed };
  });
}

/** Where others leave no place for words, the corner of the panel has the number. */
const UNLABELLED = { text: "", numbered: false, box: { x: 0, y: 0, width: 0, height: 0 } } as const;

function ringBoxes({ rings }: RemarkShape, pixel: number): readonly Box[] {
  const half = RING_PX * pixel;
  return rings.map(({ x, y }) => ({ x: x - half, y: y - half, width: 2 * half, height: 2 * half }));
}

/** The shapes of what is drawn whole, the gravest first; letters that would lie on another's are left out. */
function lettersClear(shapes: readonly RemarkShape[], pixel: number): readonly RemarkShape[] {
  const clear: RemarkShape[] = [];
  for (const shape of shapes) {
    const stand = clear.flatMap((one) => letterBoxes(one, pixel));
    const lies = letterBoxes(shape, pixel).some((box) => stand.some((on) => touch(box, on)));
    clear.push(lies ? { ...shape, letters: [] } : shape); // its lines still cross, and its label stands
  }
  return clear;
}

function letterBoxes({ letters }: RemarkShape, pixel: number): readonly Box[] {
  const size = LETTER_PX * pixel;
  return letters.map(({ at: { x, y } }) => ({
    x: x - size / 2,
    y: y - size,
    width: size,
    height: LETTER_HEIGHT * size,
  }));
}

function linesOf({ dashed, solid, arrow }: RemarkShape): readonly Path[] {
  return [...dashed, ...solid, ...(arrow === null ? [] : [arrow])];
}
