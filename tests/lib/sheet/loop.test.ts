import { describe, expect, it } from "vitest";
import { addPanel, amendHead, defaultBrief, layOut, slidePanel } from "../../../lib/sheet";
import { ids, meet, type Peer, peers } from "../../support/peers";

function alone(): Peer {
  return peers(1, layOut(defaultBrief, ids()))[0] as Peer;
}

const loopOf = (peer: Peer) => peer.sheet().head.loop;
const idAt = (peer: Peer, frame: number) =>
  peer.sheet().panels.find((panel) => panel.frame === frame)?.id ?? "";

describe("the loop", () => {
  it("goes along with the panel that it begins or ends on, in one step to undo", () => {
    const ana = alone();
    slidePanel(ana.doc, idAt(ana, 25), 27);
    expect(loopOf(ana)).toEqual({ from: 1, to: 27 });
    slidePanel(ana.doc, idAt(ana, 1), 2);
    expect(loopOf(ana)).toEqual({ from: 2, to: 27 });
    ana.undo.undo();
    ana.undo.undo();
    expect(loopOf(ana)).toEqual({ from: 1, to: 25 });
    expect(ana.undo.canUndo()).toBe(false);
  });

  it("stays where another panel stays at its end, or it would end before it starts", () => {
    const ana = alone();
    slidePanel(ana.doc, idAt(ana, 22), 25);
    slidePanel(ana.doc, ana.sheet().panels.at(-1)?.id ?? "", 28);
    expect(loopOf(ana)).toEqual({ from: 1, to: 25 });
    slidePanel(ana.doc, idAt(ana, 1), 30);
    expect(loopOf(ana)).toEqual({ from: 1, to: 25 });
  });

  it("takes in what is added behind it, but not behind what was left outside", () => {
    const ana = alone();
    addPanel(ana.doc, "behind01", { frame: 28, pose: "down", weightOn: "left" });
    expect(loopOf(ana)).toEqual({ from: 1, to: 28 });
    amendHead(ana.doc, { loop: { from: 1, to: 25 } });
    addPanel(ana.doc, "behind02", { frame: 31, pose: "passing", weightOn: "left" });
    expect(loopOf(ana)).toEqual({ from: 1, to: 25 });
    addPanel(ana.doc, "inside01", { frame: 12, pose: "breakdown", weightOn: "left" });
    expect(loopOf(ana)).toEqual({ from: 1, to: 25 });
  });

  it("is one and the same for two who move its ends at once", () => {
    const [ana, ben] = peers(2) as [Peer, Peer];
    slidePanel(ana.doc, idAt(ana, 25), 27);
    slidePanel(ben.doc, idAt(ben, 1), 3);
    meet([ana, ben]);
    expect(loopOf(ana)).toEqual(loopOf(ben));
  });
});
