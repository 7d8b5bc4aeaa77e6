import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { drawStroke, ORIGIN, openUndo, placeMark, placeMarks, readSheet } from "../../../lib/sheet";
import { meet, peers } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

const at = (x: number) => ({ x, y: 600, precision: 2.1 });
const figure = {
  side: { "left-hip": at(350), "right-hip": at(352) },
  front: { "left-hip": at(400) },
};

function sheet() {
  const [ana, ben] = peers(2);
  const panel = ana?.sheet().panels[0]?.id;
  if (ana === undefined || ben === undefined || panel === undefined) throw new Error("no peers");
  const read = () => {
    const found = readSheet(ana.doc).panels.find(({ id }) => id === panel);
    if (found === undefined) throw new Error("the panel is gone");
    return found;
  };
  return { ana, ben, panel, read };
}

describe("many marks placed at once", () => {
  it("are one update by hand and one step of undo, and keep what they do not name", () => {
    const { ana, panel, read } = sheet();
    placeMark(ana.doc, panel, "side", "head", at(1));
    const origins: unknown[] = [];
    ana.doc.on("update", (_update: Uint8Array, origin: unknown) => origins.push(origin));
    const undo = openUndo([ana.doc]);
    placeMarks(ana.doc, panel, figure);
    expect(origins).toEqual([ORIGIN.hand]);
    expect(read().marks).toEqual({ ...figure, side: { ...figure.side, head: at(1) } });
    undo.undo();
    expect(read().marks).toEqual({ side: { head: at(1) }, front: {} });
    undo.close();
  });

  it("leave a view to redraw only where they say so and there is ink", () => {
    const { ana, panel, read } = sheet();
    drawStroke(ana.doc, "strokeAA", strokeOf([[1, 2, 1]], { panel, view: "side" }));
    placeMarks(ana.doc, panel, figure);
    expect(read().toRedraw).toEqual({ side: false, front: false });
    placeMarks(ana.doc, panel, figure, { leavesInk: true });
    expect(read().toRedraw).toEqual({ side: true, front: false });
  });

  it("are refused whole when one of them is none", () => {
    const { ana, panel, read } = sheet();
    const broken = { side: { ...figure.side, head: at(Number.NaN) }, front: {} };
    expect(() => placeMarks(ana.doc, panel, broken)).toThrow(/placeMarks needs marks that are/);
    expect(read().marks.side).toEqual({});
    expect(() => placeMarks(ana.doc, "nowhere1", figure)).toThrow("no panel nowhere1");
  });

  it("stay whole figures when two people place one at once", () => {
    const { ana, ben, panel, read } = sheet();
    const other = { side: { "left-hip": at(100), "right-hip": at(102) }, front: {} };
    placeMarks(ana.doc, panel, figure);
    placeMarks(ben.doc, panel, other);
    meet([ana, ben]);
    const { side } = read().marks;
    expect([figure.side, other.side]).toContainEqual(side);
    expect(Y.encodeStateVector(ana.doc)).toEqual(Y.encodeStateVector(ben.doc));
  });
});
