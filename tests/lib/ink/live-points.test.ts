import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  decodeLive,
  encodeLive,
  type LiveMessage,
  quantisePoint,
  StrokeError,
} from "../../../lib/ink";
import { anyStroke, strokeOf } from "../../support/strokes";

const START: LiveMessage = { kind: "start", stroke: 3, ...strokeOf([[100, 200, 0.5]]) };

describe("a live message", () => {
  it("comes back as it was sent, points to a sixteenth", () => {
    fc.assert(
      fc.property(anyStroke, fc.integer({ min: 0, max: 2 ** 24 }), (whole, stroke) => {
        const { z: _, ...drawn } = whole;
        const points = drawn.points.map(quantisePoint);
        const width = Math.round(drawn.width * 16) / 16;
        const sent: [LiveMessage, LiveMessage][] = [
          [
            { kind: "start", stroke, ...drawn },
            { kind: "start", stroke, ...drawn, width, points },
          ],
          [
            { kind: "more", stroke, points: drawn.points },
            { kind: "more", stroke, points },
          ],
          [
            { kind: "end", stroke, strokeId: drawn.panel },
            { kind: "end", stroke, strokeId: drawn.panel },
          ],
          [
            { kind: "cancel", stroke },
            { kind: "cancel", stroke },
          ],
        ];
        for (const [message, back] of sent) expect(decodeLive(encodeLive(message))).toEqual(back);
      }),
      { numRuns: 200 },
    );
  });

  it("takes at most 9 bytes for one new point inside a view", () => {
    const points = [[719.5, 1199.5, 1]] as const;
    expect(encodeLive({ kind: "more", stroke: 4000, points }).length).toBeLessThanOrEqual(9);
  });

  it("can be read when the one before it was lost", () => {
    const points = [
      [300, 400, 1],
      [302, 401, 0],
    ] as const;
    expect(decodeLive(encodeLive({ kind: "more", stroke: 3, points }))).toEqual({
      kind: "more",
      stroke: 3,
      points,
    });
  });

  it("is refused when it is cut, goes on, or means nothing", () => {
    const bytes = encodeLive(START);
    for (let length = 0; length < bytes.length - 7; length++) {
      expect(() => decodeLive(bytes.subarray(0, length))).toThrow(StrokeError);
    }
    const end = encodeLive({ kind: "end", stroke: 1, strokeId: "strokeAA" });
    expect(() => decodeLive(Uint8Array.from([...end, 0]))).toThrow(/1 bytes follow/);
    expect(() => decodeLive(Uint8Array.from([0, 9, 0, 0, 1, 1, 65]))).toThrow(/number 9/);
    expect(() => decodeLive(new Uint8Array(20).fill(255))).toThrow(/no end/);
  });

  it("reads or refuses any bytes", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        try {
          expect(decodeLive(bytes).stroke).toBeGreaterThanOrEqual(0);
        } catch (error) {
          expect(error).toBeInstanceOf(StrokeError);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
