import { describe, expect, it } from "vitest";
import { createLiveBook, paperKey, SILENCE_MS } from "../../../app/_ink/live-book";
import type { InkPoint, LiveMessage } from "../../../lib/ink";

const ANNE = 7;
const BEN = 9;
const HERE = paperKey("panel-aa", "side");

const start = (stroke: number, points: InkPoint[] = [[1, 2, 0.5]]): LiveMessage => ({
  ...{ kind: "start", stroke, panel: "panel-aa", view: "side" },
  ...{ nib: "fine", colour: "graphite", width: 4, points },
});

describe("the book of live strokes", () => {
  it("grows a stroke where it was begun", () => {
    const book = createLiveBook();
    expect(book.hear(ANNE, start(0), 0)).toEqual([HERE]);
    const more: LiveMessage = { kind: "more", stroke: 0, points: [[5, 6, 0.7]] };
    expect(book.hear(ANNE, more, 16)).toEqual([HERE]);
    expect(book.on(HERE).map(({ points }) => points)).toEqual([
      [
        [1, 2, 0.5],
        [5, 6, 0.7],
      ],
    ]);
    expect(book.on(paperKey("panel-aa", "front"))).toEqual([]);
  });

  it("keeps two people's first strokes apart, though both count from nought", () => {
    const book = createLiveBook();
    book.hear(ANNE, start(0), 0);
    book.hear(BEN, start(0, [[9, 9, 0.5]]), 0);
    book.hear(BEN, { kind: "cancel", stroke: 0 }, 10);
    expect(book.on(HERE).map(({ sender }) => sender)).toEqual([ANNE]);
  });

  it("shows a finished stroke until the document brings it, and no longer", () => {
    const book = createLiveBook();
    book.hear(ANNE, start(0), 0);
    book.hear(ANNE, { kind: "end", stroke: 0, strokeId: "stroke-1" }, 20);
    expect(book.arrived("stroke-2")).toEqual([]);
    expect(book.on(HERE)).toHaveLength(1);
    expect(book.arrived("stroke-1")).toEqual([HERE]);
    expect(book.size).toBe(0);
  });

  it("forgets a stroke that fell silent, and not one that still grows", () => {
    const book = createLiveBook();
    book.hear(ANNE, start(0), 0);
    book.hear(BEN, start(0), 0);
    book.hear(BEN, { kind: "more", stroke: 0, points: [[3, 3, 0.5]] }, 5000);
    expect(book.expire(SILENCE_MS - 1)).toEqual([]);
    expect(book.expire(SILENCE_MS)).toEqual([HERE]);
    expect(book.on(HERE).map(({ sender }) => sender)).toEqual([BEN]);
  });

  it("takes a person's strokes away when they leave", () => {
    const book = createLiveBook();
    book.hear(ANNE, start(0), 0);
    book.hear(BEN, start(0), 0);
    expect(book.keepOnly(new Set([BEN]))).toEqual([HERE]);
    expect(book.on(HERE).map(({ sender }) => sender)).toEqual([BEN]);
  });

  it("shows nothing of a stroke whose start went missing", () => {
    const book = createLiveBook();
    expect(book.hear(ANNE, { kind: "more", stroke: 3, points: [[1, 1, 1]] }, 0)).toEqual([]);
    expect(book.size).toBe(0);
  });

  it("holds no more than a hand could draw, whatever is sent", () => {
    const book = createLiveBook();
    for (let stroke = 0; stroke < 1000; stroke++) book.hear(ANNE, start(stroke), 0);
    expect(book.size).toBeLessThanOrEqual(16);
  });
});
