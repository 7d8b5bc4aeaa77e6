import fc from "fast-check";
import { VIEWS } from "../../lib/geometry";
import { INKS, type InkPoint, NIBS, type Stroke } from "../../lib/ink";

const coordinate = fc.double({ min: -2000, max: 3000, noNaN: true });
const far = fc.double({ min: -131_071, max: 131_071, noNaN: true });
const pressure = fc.double({ min: 0, max: 1, noNaN: true });
const point = fc.oneof(
  { weight: 9, arbitrary: fc.tuple(coordinate, coordinate, pressure) },
  { weight: 1, arbitrary: fc.tuple(far, far, pressure) },
);
const id = fc.stringMatching(/^[A-Za-z0-9_-]{1,63}$/);

/** Any stroke that may be packed, wild ones included. */
export const anyStroke: fc.Arbitrary<Stroke> = fc.record({
  panel: id,
  view: fc.constantFrom(...VIEWS),
  nib: fc.constantFrom(...NIBS),
  colour: fc.constantFrom(...INKS),
  width: fc.double({ min: 1 / 16, max: 4096, noNaN: true }),
  z: fc.integer({ min: -(2 ** 24), max: 2 ** 24 }),
  points: fc.array(point, { minLength: 1, maxLength: 120 }),
});

/** A stroke with these points, and nothing remarkable else. */
export function strokeOf(points: readonly InkPoint[], rest: Partial<Stroke> = {}): Stroke {
  return {
    panel: "panelAAA",
    view: "side",
    nib: "fine",
    colour: "graphite",
    width: 4,
    z: 1,
    points,
    ...rest,
  };
}
