import { describe, expect, it } from "vitest";
import {
  addPanel,
  amendHead,
  defaultBrief,
  evenOut,
  layOut,
  planEvenOut,
  removePanel,
  slidePanel,
} from "../../../lib/sheet";
import reference from "../../reference/even-step.json";
import { ids, meet, type Peer, peers } from "../../support/peers";

const EVEN = reference.rows[0]?.frames ?? [];

function alone(sheet = layOut(defaultBrief, ids())): Peer {
  return peers(1, sheet)[0] as Peer;
}

const framesOf = (peer: Peer) => peer.sheet().panels.map(({ frame }) => frame);
const idAt = (peer: Peer, frame: number) =>
  peer.sheet().panels.find((panel) => panel.frame === frame)?.id ?? "";

describe("evening out", () => {
  it("lays every step on its even frames and leaves the contacts", () => {
    const ana = alone();
    slidePanel(ana.doc, idAt(ana, 4), 6);
    slidePanel(ana.doc, idAt(ana, 16), 17);
    slidePanel(ana.doc, idAt(ana, 22), 20);
    evenOut(ana.doc, "strip");
    expect(framesOf(ana)).toEqual(EVEN);
  });

  it("is one step to undo and to do again", () => {
    const ana = alone();
    slidePanel(ana.doc, idAt(ana, 4), 6);
    slidePanel(ana.doc, idAt(ana, 16), 17);
    const uneven = framesOf(ana);
    evenOut(ana.doc, "strip");
    ana.undo.undo();
    expect(framesOf(ana)).toEqual(uneven);
    ana.undo.redo();
    expect(framesOf(ana)).toEqual(EVEN);
  });

  it("touches one step alone when asked to", () => {
    const ana = alone();
    slidePanel(ana.doc, idAt(ana, 4), 6);
    slidePanel(ana.doc, idAt(ana, 16), 17);
    evenOut(ana.doc, { step: idAt(ana, 13) });
    expect(framesOf(ana)).toEqual([1, 6, 7, 10, 13, 16, 19, 22, 25]);
  });

  it("keeps a contact where it was moved to and spreads both steps beside it", () => {
    const ana = alone();
    slidePanel(ana.doc, idAt(ana, 13), 15);
    evenOut(ana.doc, "strip");
    // By hand: 14 frames from 1 to 15, 10 from 15 to 25; quarters 4.5 8 11.5 and 17.5 20 22.5, of two
    // equally near frames the one nearer to where the panel was (4, 10 and 16, 22).
    expect(framesOf(ana)).toEqual([1, 4, 8, 11, 15, 17, 20, 22, 25]);
  });

  it("stays on odd frames on twos", () => {
    const ana = alone();
    amendHead(ana.doc, { exposure: 2 });
    evenOut(ana.doc, "strip");
    // Quarters 4 7 10 and 16 19 22: half-way between two drawn frames from an even one.
    expect(framesOf(ana)).toEqual([1, 5, 7, 11, 13, 17, 19, 23, 25]);
  });

  it("lays a breakdown half way between its neighbours", () => {
    const ana = alone(layOut({ ...defaultBrief, framesPerStep: { left: 16, right: 12 } }, ids()));
    addPanel(ana.doc, "break001", { frame: 6, pose: "breakdown", weightOn: "left" });
    slidePanel(ana.doc, idAt(ana, 5), 3);
    evenOut(ana.doc, { step: idAt(ana, 1) });
    expect(framesOf(ana).slice(0, 6)).toEqual([1, 5, 7, 9, 13, 17]);
    expect(ana.sheet().panels.find(({ id }) => id === "break001")?.frame).toBe(7);
  });

  it("spreads by count what was drawn in another order", () => {
    const ana = alone();
    slidePanel(ana.doc, idAt(ana, 10), 6); // up before passing, as life has it
    const order = ana.sheet().panels.map(({ pose }) => pose);
    evenOut(ana.doc, "strip");
    expect(framesOf(ana)).toEqual(EVEN);
    expect(ana.sheet().panels.map(({ pose }) => pose)).toEqual(order);
  });

  it("leaves a step without room, and one without its next contact", () => {
    const ana = alone();
    removePanel(ana.doc, idAt(ana, 25));
    slidePanel(ana.doc, idAt(ana, 13), 12);
    slidePanel(ana.doc, idAt(ana, 16), 18);
    const sheet = ana.sheet();
    const plan = planEvenOut(sheet, { step: idAt(ana, 12) });
    expect(plan.frames.size).toBe(0);
    const crowded = {
      ...sheet,
      panels: sheet.panels.map((panel) => ({ ...panel, frame: Math.min(panel.frame, 3) })),
    };
    expect(planEvenOut(crowded, "strip").frames.size).toBe(0);
  });

  it("plans nothing on an even strip, and writes nothing", () => {
    const ana = alone();
    expect(planEvenOut(ana.sheet(), "strip")).toEqual({ frames: new Map(), head: {} });
    evenOut(ana.doc, "strip");
    expect(ana.undo.canUndo()).toBe(false);
  });

  it("keeps every panel when two even out at once and one adds", () => {
    const [ana, ben] = peers(2) as [Peer, Peer];
    slidePanel(ana.doc, idAt(ana, 4), 6);
    meet([ana, ben]);
    evenOut(ana.doc, "strip");
    addPanel(ben.doc, "break002", { frame: 8, pose: "breakdown", weightOn: "left" });
    evenOut(ben.doc, "strip");
    meet([ana, ben]);
    expect(ana.sheet()).toEqual(ben.sheet());
    expect(ana.sheet().panels).toHaveLength(10);
  });
});
