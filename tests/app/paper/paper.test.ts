import { describe, expect, it } from "vitest";
import { bitmapSize } from "../../../app/_paper/bitmap-size";
import { pixelBox } from "../../../app/_paper/box";
import { createPaintQueue } from "../../../app/_paper/paint-queue";
import { repaintPlan } from "../../../app/_paper/repaint-plan";
import type { InkPoint } from "../../../lib/ink";

const line = (y: number) => {
  const points: InkPoint[] = [
    [10, y, 0.5],
    [50, y, 0.5],
  ];
  return { width: 4, points };
};
const [A, B, C] = [line(10), line(100), line(200)];

describe("what has to be painted again", () => {
  it("is nothing when every stroke is the same object", () => {
    expect(repaintPlan([A, B], [A, B])).toEqual({ kind: "none" });
  });
  it("is the new ones alone when they lie on top", () => {
    expect(repaintPlan([A], [A, B, C])).toEqual({ kind: "append", strokes: [B, C] });
  });
  it("is the box of a stroke that went, its width included", () => {
    const box = { left: 8, top: 98, right: 52, bottom: 102 };
    expect(repaintPlan([A, B, C], [A, C])).toEqual({ kind: "box", box });
  });
  it("is the box of a stroke that came in underneath", () => {
    expect(repaintPlan([A, C], [B, A, C])).toMatchObject({ kind: "box", box: { top: 98 } });
  });
  it("is everything when strokes changed places", () => {
    expect(repaintPlan([A, B, C], [C, A, B])).toEqual({ kind: "whole" });
  });
});

describe("the pixels behind a paper", () => {
  it("are the screen's own, in the paper's shape", () => {
    expect(bitmapSize(360, 2)).toEqual({ width: 720, height: 1200, scale: 1 });
  });
  it("stop where browsers stop", () => {
    const { width, height } = bitmapSize(6000, 3);
    expect(width * height).toBeLessThanOrEqual(16_777_216);
    expect(width / height).toBeCloseTo(0.6, 3);
  });
  it("of a box are whole, and none of it is left out", () => {
    const box = pixelBox({ left: 10, top: 20, right: 30, bottom: 41 }, 0.33);
    expect(Object.values(box).every(Number.isInteger)).toBe(true);
    expect(box.x).toBeLessThan(3.3);
    expect(box.x + box.width).toBeGreaterThan(9.9);
    expect(box.y + box.height).toBeGreaterThan(13.53);
  });
});

describe("the paint queue", () => {
  it("does no more in a frame than its time allows, and goes on in the next", () => {
    let clock = 0;
    let pieces = 0;
    const frames: (() => void)[] = [];
    const queue = createPaintQueue({ nextFrame: (run) => frames.push(run), now: () => clock });
    const paperful = function* () {
      for (let piece = 0; piece < 20; piece++) {
        pieces++;
        clock += 2; // ms
        yield;
      }
    };
    queue.add({}, paperful());
    queue.add({}, paperful());
    const each: number[] = [];
    for (let frame = frames.shift(); frame !== undefined; frame = frames.shift()) {
      const before = pieces;
      frame();
      each.push(pieces - before);
    }
    expect(pieces).toBe(40);
    expect(Math.max(...each)).toBeLessThanOrEqual(3);
  });

  it("gives a job's place to the next one under the same key, and drops what is not wanted", () => {
    const did: string[] = [];
    const frames: (() => void)[] = [];
    const queue = createPaintQueue({ nextFrame: (run) => frames.push(run), now: () => 0 });
    const say = function* (word: string): Generator<void, void> {
      did.push(word);
      yield;
    };
    const [one, other] = [{}, {}];
    queue.add(one, say("old"));
    queue.add(one, say("new"));
    queue.add(other, say("unwanted"));
    queue.drop(other);
    for (let frame = frames.shift(); frame !== undefined; frame = frames.shift()) frame();
    expect(did).toEqual(["new"]);
  });
});
