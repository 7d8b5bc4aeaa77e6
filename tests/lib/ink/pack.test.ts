import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { packStroke, quantiseStroke, StrokeError, unpackStroke } from "../../../lib/ink";
import { dice } from "../../support/dice";
import { anyStroke, strokeOf } from "../../support/strokes";

const TAP = strokeOf([[10, 20, 0.5]]);
const CURVE = strokeOf(
  Array.from({ length: 40 }, (_, i) => [i * 7, 500 + 90 * Math.sin(i / 6), (i % 9) / 9] as const),
);

/** What unpacking answers, or the error's code. */
function tryUnpack(bytes: Uint8Array): unknown {
  try {
    return unpackStroke(bytes);
  } catch (error) {
    if (error instanceof StrokeError) return error.code;
    throw error;
  }
}

describe("packing a stroke", () => {
  it("gives back every stroke to a sixteenth of a unit", () => {
    fc.assert(
      fc.property(anyStroke, (stroke) => {
        expect(unpackStroke(packStroke(stroke))).toEqual(quantiseStroke(stroke));
      }),
      { numRuns: 500 },
    );
  });

  it("is off by no more than half a sixteenth, and half a pressure step", () => {
    const { points } = unpackStroke(packStroke(CURVE));
    points.forEach(([x, y, pressure], i) => {
      const [drawnX = 0, drawnY = 0, drawnPressure = 0] = CURVE.points[i] ?? [];
      expect(Math.abs(x - drawnX)).toBeLessThanOrEqual(1 / 32);
      expect(Math.abs(y - drawnY)).toBeLessThanOrEqual(1 / 32);
      expect(Math.abs(pressure - drawnPressure)).toBeLessThanOrEqual(1 / 126 + 1e-12);
    });
  });

  it("keeps a tap, the corners of all it can hold, and a line of one pressure", () => {
    const far = 131_071;
    for (const points of [
      [[0, 0, 0]],
      [[-0, -0, -0]],
      [
        [far, -far, 1],
        [-far, far, 0],
        [far, -far, 1],
      ],
      Array.from({ length: 3000 }, (_, i) => [i, i, 0.5] as const),
    ] as const) {
      const stroke = strokeOf(points as [number, number, number][]);
      expect(unpackStroke(packStroke(stroke))).toEqual(quantiseStroke(stroke));
    }
  });

  it("brings to the edge what lies beyond it", () => {
    const [point] = unpackStroke(packStroke(strokeOf([[1e9, -1e9, 7]]))).points;
    expect(point).toEqual([131_071, -131_071, 1]);
  });

  it("refuses what is no stroke, and says why", () => {
    const bad: [Parameters<typeof strokeOf>[1] & object, RegExp][] = [
      [{ points: [] }, /1 to 65535 points, got 0/],
      [{ points: [[Number.NaN, 0, 0]] }, /finite coordinate, got NaN/],
      [{ points: [[0, 0, Number.POSITIVE_INFINITY]] }, /finite pressure, got Infinity/],
      [{ width: 0 }, /width above 0, got 0/],
      [{ z: 0.5 }, /whole z.*got 0.5/],
      [{ panel: "no id" }, /base64url characters, got "no id"/],
    ];
    for (const [rest, message] of bad) {
      expect(() => packStroke(strokeOf(TAP.points, rest))).toThrow(message);
      expect(() => packStroke(strokeOf(TAP.points, rest))).toThrow(RangeError);
    }
  });
});

describe("unpacking damaged bytes", () => {
  it("says that every shorter piece of a stroke is cut short or damaged", () => {
    for (const whole of [packStroke(TAP), packStroke(CURVE)]) {
      for (let length = 0; length < whole.length; length++) {
        expect(["truncated", "damaged"]).toContain(tryUnpack(whole.subarray(0, length)));
      }
    }
  });

  it("refuses what follows a stroke", () => {
    const whole = packStroke(CURVE);
    for (const junk of [[0], [1], [0, 0, 0], Array.from(whole)]) {
      expect(tryUnpack(Uint8Array.from([...whole, ...junk]))).toBe("trailing");
    }
  });

  it("refuses a version that it does not know", () => {
    const whole = packStroke(TAP);
    expect(tryUnpack(Uint8Array.from([2, ...whole.subarray(1)]))).toBe("newer-version");
    expect(tryUnpack(Uint8Array.from([0, ...whole.subarray(1)]))).toBe("damaged");
  });

  it("refuses a count that its bytes cannot hold, before it makes room for it", () => {
    const header = packStroke(TAP).subarray(0, 12);
    const manyOnes = new Uint8Array(40).fill(255);
    expect(["damaged", "truncated"]).toContain(
      tryUnpack(Uint8Array.from([...header, ...manyOnes])),
    );
  });

  it.each([1, 2, 3, 4])("refuses flipped bits or reads another whole stroke (SEED=%i)", (seed) => {
    const throws = dice(seed);
    const whole = packStroke(CURVE);
    const seen = new Map<string, number>();
    for (let turn = 0; turn < 2000; turn++) {
      const bytes = Uint8Array.from(whole);
      for (let flips = 1 + throws.below(4); flips > 0; flips--) {
        const at = throws.below(bytes.length);
        bytes[at] = (bytes[at] ?? 0) ^ (1 << throws.below(8));
      }
      const got = tryUnpack(bytes);
      const what = typeof got === "string" ? got : "stroke";
      seen.set(what, (seen.get(what) ?? 0) + 1);
      if (typeof got === "object") {
        const stroke = got as ReturnType<typeof unpackStroke>;
        expect(unpackStroke(packStroke(stroke))).toEqual(stroke);
        expect(stroke.points.flat().every(Number.isFinite)).toBe(true);
      }
    }
    expect(seen.get("stroke")).toBeGreaterThan(0);
    expect(seen.size).toBeGreaterThan(1);
  });

  it("refuses bytes of no meaning", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        const got = tryUnpack(Uint8Array.from([1, ...bytes]));
        if (typeof got === "string") {
          expect(["truncated", "trailing", "damaged"]).toContain(got);
        } else {
          expect((got as ReturnType<typeof unpackStroke>).points.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
