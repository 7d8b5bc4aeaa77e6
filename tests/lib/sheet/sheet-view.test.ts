import { describe, expect, it, vi } from "vitest";
import * as Y from "yjs";
import { packStroke } from "../../../lib/ink";
import {
  amendHead,
  defaultBrief,
  drawStroke,
  layOut,
  openSheetView,
  placeMark,
  readSheet,
  readSheetCounting,
  rubOut,
  slidePanel,
  writeSheet,
} from "../../../lib/sheet";
import { ids } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

function opened() {
  const doc = new Y.Doc();
  writeSheet(doc, layOut(defaultBrief, ids()));
  const view = openSheetView(doc);
  const panel = (index: number) => {
    const one = view.getSnapshot().panels[index];
    if (one === undefined) throw new RangeError(`no panel ${index}`);
    return one;
  };
  return { doc, view, panel };
}

describe("a view of a sheet", () => {
  it("is the same object until something changes", () => {
    const { doc, view } = opened();
    const before = view.getSnapshot();
    expect(view.getSnapshot()).toBe(before);
    doc.transact(() => doc.getMap("elsewhere").set("a", 1));
    expect(view.getSnapshot()).toBe(before);
    amendHead(doc, { title: "Another" });
    expect(view.getSnapshot()).not.toBe(before);
  });

  it("keeps the panels, strokes and marks that nobody touched", () => {
    const { doc, view, panel } = opened();
    const [first, second] = [panel(0), panel(1)];
    drawStroke(doc, "strokeAA", strokeOf([[1, 2, 1]], { panel: first.id }));
    drawStroke(doc, "strokeBB", strokeOf([[1, 2, 1]], { panel: first.id, view: "front" }));
    placeMark(doc, first.id, "side", "head", { x: 1, y: 2, precision: 3 });
    const before = view.getSnapshot().panels[0];
    drawStroke(doc, "strokeCC", strokeOf([[3, 4, 1]], { panel: first.id, z: 2 }));
    const after = panel(0);
    expect(after).not.toBe(before);
    expect(after.ink.side[0]).toBe(before?.ink.side[0]);
    expect(after.ink.front).toBe(before?.ink.front);
    expect(after.marks).toBe(before?.marks);
    expect(panel(1)).toBe(second);
    slidePanel(doc, first.id, 2);
    expect(panel(0).ink).toBe(after.ink);
    expect(panel(0).marks).toBe(after.marks);
    rubOut(doc, ["strokeCC"]);
    expect(panel(0).ink.side).toEqual(before?.ink.side);
  });

  it("lays strokes by z, then id, in whichever order they came", () => {
    const { doc, panel } = opened();
    const { id } = panel(0);
    for (const [stroke, z] of [
      ["strokeDD", 2],
      ["strokeBB", 1],
      ["strokeCC", 1],
      ["strokeAA", 3],
    ] as const) {
      drawStroke(doc, stroke, strokeOf([[1, 2, 1]], { panel: id, z }));
    }
    expect(panel(0).ink.side.map((stroke) => stroke.id)).toEqual([
      "strokeBB",
      "strokeCC",
      "strokeDD",
      "strokeAA",
    ]);
  });

  it("tells once a transaction, after which the snapshot is new, and stops when asked", () => {
    const { doc, view, panel } = opened();
    const seen: number[] = [];
    const stop = view.subscribe(() => seen.push(view.getSnapshot().panels[0]?.frame ?? 0));
    const { id } = panel(0);
    doc.transact(() => {
      slidePanel(doc, id, 2);
      slidePanel(doc, id, 3);
    });
    expect(seen).toEqual([3]);
    stop();
    slidePanel(doc, id, 2);
    expect(seen).toEqual([3]);
  });

  it("lets the document go when it is closed", () => {
    const { doc, view, panel } = opened();
    const told = vi.fn();
    view.subscribe(told);
    const last = view.getSnapshot();
    const { id } = panel(0);
    view.close();
    slidePanel(doc, id, 2);
    expect(told).not.toHaveBeenCalled();
    expect(view.getSnapshot()).toBe(last);
  });

  it("leaves out what it cannot read, names it, and keeps the rest", () => {
    const { doc, view, panel } = opened();
    const { id } = panel(0);
    const map = doc.getMap("panels").get(id) as Y.Map<unknown>;
    const bytes = packStroke(strokeOf([[1, 2, 1]], { panel: id }));
    doc.transact(() => {
      map.set("side.left-knee", ["1", 2, 3]);
      map.set("side.right-knee", [1, 2]);
      map.set("side.third-knee", [1, 2, 3]);
      map.set("front.head", [Number.NaN, 2, 3]);
      map.set("hold", -1);
      map.set("weightOn", "both");
      map.set("a-later-version-wrote-this", true);
      doc.getMap("panels").set("junk", 7);
      doc.getMap("panels").set("list", new Y.Array());
      doc.getMap("sheet").set("exposure", 3);
      doc.getMap("sheet").set("build", { headsTall: 7 });
      doc.getMap("strokes").set("cut", bytes.subarray(0, 9));
      doc.getMap("strokes").set("text", "ink");
      doc.getMap("strokes").set("strokeAA", bytes);
    });
    const names = [
      ...["build", "cut", "exposure", "junk", "list", "text"],
      ...["front.head", "hold", "side.left-knee", "side.right-knee", "side.third-knee"].map(
        (name) => `${id}.${name}`,
      ),
      `${id}.weightOn`,
    ].sort();
    expect(view.skipped()).toEqual(names);
    expect(readSheetCounting(doc).skipped).toEqual(names);
    expect(view.getSnapshot()).toEqual(readSheet(doc));
    expect(panel(0)).toMatchObject({ id, hold: 0, weightOn: null, marks: { side: {}, front: {} } });
    expect(panel(0).ink.side.map((stroke) => stroke.id)).toEqual(["strokeAA"]);
    expect(view.getSnapshot().head.exposure).toBe(1);
    expect(view.getSnapshot().panels.length).toBe(9);
  });

  it("shows a plain brief while the document is still empty", () => {
    const view = openSheetView(new Y.Doc());
    expect(view.getSnapshot()).toMatchObject({ head: { framesPerSecond: 24 }, panels: [] });
    expect(view.skipped()).toEqual([]);
  });

  it("reads a panel whose frame makes no sense as not on the strip", () => {
    const { doc, view, panel } = opened();
    const { id } = panel(0);
    (doc.getMap("panels").get(id) as Y.Map<unknown>).set("frame", 1.5);
    expect(view.getSnapshot().panels.length).toBe(8);
    expect(view.skipped()).toEqual([`${id}.frame`]);
    slidePanel(doc, id, 2);
    expect(view.getSnapshot().panels.length).toBe(9);
    expect(view.skipped()).toEqual([]);
  });
});
