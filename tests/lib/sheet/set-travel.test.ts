import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { reviewWalk } from "../../../lib/gait";
import {
  capturedExample,
  drawStroke,
  openUndo,
  readSheet,
  SheetError,
  setPlace,
  setTravel,
  walkOf,
  writeSheet,
} from "../../../lib/sheet";

function captured() {
  let ids = 0;
  const doc = new Y.Doc();
  writeSheet(
    doc,
    capturedExample(() => `panel-${ids++}`),
  );
  return doc;
}

const told = (doc: Y.Doc) =>
  reviewWalk(walkOf(readSheet(doc)), "life").findings.flatMap((finding) =>
    finding.check === "slide" && finding.kind === "sound"
      ? [finding.measured?.value.toFixed(6)]
      : [finding.kind === "remark" ? finding.title : ""],
  );

describe("switching a sheet's travel", () => {
  it("keeps every drawing where it is on the ground, ink and all", () => {
    const doc = captured();
    const before = told(doc);
    const [, panel] = readSheet(doc).panels;
    if (panel === undefined) throw new Error("the stride has panels");
    drawStroke(doc, "stroke-1", {
      ...{ panel: panel.id, view: "side", nib: "fine", colour: "graphite", width: 4, z: 1 },
      points: [
        [300, 400, 0.5],
        [310, 420, 0.5],
      ],
    });
    const hip = panel.marks.side["left-hip"]?.x ?? Number.NaN;
    setTravel(doc, readSheet(doc), "on-the-spot");
    const { head, panels } = readSheet(doc);
    expect(head.travel).toBe("on-the-spot");
    expect(panels.every(({ place }) => place === null)).toBe(true);
    expect(told(doc)).toEqual(before);
    const moved = (panels[1]?.marks.side["left-hip"]?.x ?? Number.NaN) - hip;
    expect(Math.abs(moved)).toBeGreaterThan(0.5);
    expect(panels[1]?.ink.side[0]?.points[0]?.[0]).toBeCloseTo(300 + moved, 1);
  });

  it("leaves drawings and readings as they are on the way to travelling", () => {
    const doc = captured();
    setTravel(doc, readSheet(doc), "on-the-spot");
    const onTheSpot = readSheet(doc);
    setTravel(doc, onTheSpot, "travelling");
    expect(readSheet(doc).panels).toEqual(onTheSpot.panels);
    expect(readSheet(doc).head).toEqual({ ...onTheSpot.head, travel: "travelling" });
  });

  it("lets go of a place that was left over, since nothing showed it", () => {
    const doc = captured();
    setTravel(doc, readSheet(doc), "on-the-spot");
    const before = told(doc);
    const [panel] = readSheet(doc).panels;
    setPlace(doc, panel?.id ?? "", 40);
    setTravel(doc, readSheet(doc), "travelling");
    expect(readSheet(doc).panels[0]?.place).toBeNull();
    expect(told(doc)).toEqual(before);
  });

  it("is one edit, and undone as one", () => {
    const doc = captured();
    const before = readSheet(doc);
    const undo = openUndo([doc]);
    setTravel(doc, before, "on-the-spot");
    undo.undo();
    expect(readSheet(doc)).toEqual(before);
    expect(undo.canUndo()).toBe(false);
    undo.close();
  });

  it("writes nothing of a sheet that has lost a panel meanwhile", () => {
    const doc = captured();
    const stale = readSheet(doc);
    const gone = { ...stale, panels: stale.panels.map((one) => ({ ...one, id: `x-${one.id}` })) };
    expect(() => setTravel(doc, gone, "on-the-spot")).toThrow(SheetError);
  });
});
