import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { reviewWalk } from "../../../lib/gait";
import {
  defaultBrief,
  drawStroke,
  layOut,
  measuredWalkOf,
  openSheetView,
  placeMark,
  slidePanel,
  walkOf,
  writeSheet,
} from "../../../lib/sheet";
import { ids } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

function opened() {
  const doc = new Y.Doc();
  writeSheet(doc, layOut(defaultBrief, ids()));
  const view = openSheetView(doc);
  const id = view.getSnapshot().panels[2]?.id ?? "";
  const panels = () => measuredWalkOf(view.getSnapshot()).panels;
  return { doc, view, id, panels };
}

describe("a sheet's walk as it is measured", () => {
  it("reads the same as the sheet's own panels", () => {
    const sheet = opened().view.getSnapshot();
    const findings = (walk: ReturnType<typeof walkOf>) => reviewWalk(walk, "trade").findings;
    expect(findings(measuredWalkOf(sheet))).toEqual(findings(walkOf(sheet)));
    expect(findings(walkOf(sheet)).length).toBeGreaterThan(0);
  });

  it("has the very panels it had after a stroke, and a new one after a mark or another frame", () => {
    const { doc, id, panels, view } = opened();
    const before = panels();
    const drawn = view.getSnapshot().panels[2];
    drawStroke(doc, "strokeAA", strokeOf([[1, 2, 1]], { panel: id }));
    expect(view.getSnapshot().panels[2]).not.toBe(drawn);
    expect(panels().every((panel, at) => panel === before[at])).toBe(true);
    placeMark(doc, id, "side", "left-hip", { x: 300, y: 400, precision: 2 });
    const marked = panels();
    expect(marked.filter((panel, at) => panel !== before[at]).map((one) => one.id)).toEqual([id]);
    slidePanel(doc, id, (before[2]?.frame ?? 0) + 1);
    expect(panels().find((one) => one.id === id)?.frame).toBe((before[2]?.frame ?? 0) + 1);
    expect(panels()).not.toContain(marked[2]);
  });
});
