import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { bitmapSize } from "../../../app/_paper/bitmap-size";
import { openInkBitmap } from "../../../app/_paper/ink-bitmap";
import { createPaintQueue } from "../../../app/_paper/paint-queue";
import type { InkStroke } from "../../../lib/sheet";

/** A canvas that writes down what is done to it. */
function fakeCanvas(did: string[], name: string) {
  const context = {
    ...{ globalAlpha: 1, fillStyle: "", strokeStyle: "", lineWidth: 1 },
    fill: () => did.push(`${name} fill ${context.globalAlpha.toFixed(2)}`),
    clearRect: () => did.push(`${name} clear`),
    drawImage: () => did.push(`${name} put down`),
    ...{ save() {}, restore() {}, scale() {}, setTransform() {} },
    ...{ beginPath() {}, rect() {}, clip() {}, stroke() {} },
    ...{ fillRect() {}, getImageData: () => ({ data: [] }), putImageData() {} },
    createPattern: () => ({ setTransform() {} }),
  };
  return { width: 0, height: 0, getContext: () => context };
}

const stroke = (id: string, y: number): InkStroke => ({
  ...{ id, panel: "p", view: "side", nib: "fine", colour: "graphite", width: 4, z: 1 },
  points: [
    [100, y, 0.5],
    [140, y, 0.5],
    [200, y + 5, 0.5],
  ],
});

const SIZE = bitmapSize(720, 1);
const [A, B, C] = [stroke("a", 100), stroke("b", 500), stroke("c", 900)];

describe("an ink bitmap", () => {
  const did: string[] = [];
  const frames: (() => void)[] = [];
  const painted: (readonly InkStroke[])[] = [];
  const runFrames = () => {
    for (let frame = frames.shift(); frame !== undefined; frame = frames.shift()) frame();
  };
  const open = () =>
    openInkBitmap(
      fakeCanvas(did, "paper") as unknown as HTMLCanvasElement,
      (ink) => painted.push(ink),
      createPaintQueue({ nextFrame: (run) => frames.push(run), now: () => 0 }),
    );

  beforeEach(() => {
    for (const list of [did, frames, painted]) list.length = 0;
    vi.stubGlobal("document", { createElement: () => fakeCanvas(did, "beside") });
    vi.stubGlobal("DOMMatrix", class {});
    vi.stubGlobal(
      "Path2D",
      class {
        moveTo() {}
        lineTo() {}
        quadraticCurveTo() {}
        closePath() {}
      },
    );
  });
  afterEach(() => vi.unstubAllGlobals());

  it("paints a whole view beside itself, when its turn comes", () => {
    open().show([A, B], SIZE);
    expect(did).toEqual([]);
    runFrames();
    expect(did).toEqual(["beside fill 0.92", "beside fill 0.92", "paper put down"]);
    expect(painted).toEqual([[A, B]]);
  });

  it("paints one appended stroke and nothing else, at once", () => {
    const bitmap = open();
    bitmap.show([A, B], SIZE);
    runFrames();
    did.length = 0;
    bitmap.show([A, B, C], SIZE);
    expect(did).toEqual(["paper fill 0.92"]);
    expect(painted.at(-1)).toEqual([A, B, C]);
  });

  it("paints the first stroke on an empty paper at once", () => {
    open().show([A], SIZE);
    expect(did).toEqual(["beside fill 0.92", "paper put down"]);
  });

  it("paints again only what lay where a stroke went", () => {
    const bitmap = open();
    bitmap.show([A, B, stroke("d", 102)], SIZE);
    runFrames();
    did.length = 0;
    bitmap.show([A, B], SIZE);
    expect(did).toEqual(["paper clear", "paper fill 0.92"]); // A lay under it, B far below
  });

  it("shows what is being rubbed out as nearly gone, and undo brings it back whole", () => {
    const bitmap = open();
    bitmap.show([A, B], SIZE);
    runFrames();
    did.length = 0;
    bitmap.fade(new Set(["b"]));
    expect(did).toEqual(["paper clear", "paper fill 0.15"]);
    bitmap.show([A], SIZE);
    did.length = 0;
    bitmap.show([A, B], SIZE);
    expect(did).toEqual(["paper fill 0.92"]);
  });

  it("paints everything anew at another size, and only the last of several", () => {
    const bitmap = open();
    bitmap.show([A, B], SIZE);
    runFrames();
    did.length = 0;
    for (const width of [400, 500, 600]) bitmap.show([A, B], bitmapSize(width, 1));
    runFrames();
    expect(did).toEqual(["beside fill 0.92", "beside fill 0.92", "paper put down"]);
  });

  it("lets its pixels go when nobody sees them, and paints nothing then", () => {
    const bitmap = open();
    bitmap.show([A, B], SIZE);
    bitmap.rest();
    runFrames();
    expect(did).toEqual([]);
  });
});
