import { describe, expect, it, vi } from "vitest";
import type { Stroke } from "../../../lib/ink";
import {
  addPanel,
  drawStroke,
  ORIGIN,
  type PanelId,
  placeMark,
  removePanel,
  rubOut,
  slidePanel,
} from "../../../lib/sheet";
import { meet, type Peer, peers } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

const inkIn = (peer: Peer): string[] =>
  peer
    .sheet()
    .panels.flatMap(({ ink }) => ink.side.map(({ id }) => id))
    .sort();
const firstPanel = (peer: Peer): PanelId => peer.sheet().panels[0]?.id ?? "";
const draw = (peer: Peer, id: string): void => {
  const stroke: Stroke = strokeOf([[1, 2, 1]], { panel: firstPanel(peer) });
  drawStroke(peer.doc, id, stroke);
};
const pair = (): [Peer, Peer] => {
  const [ana, ben] = peers(2);
  return [ana as Peer, ben as Peer];
};

describe("undo", () => {
  it("takes back only this person's strokes, the last first, and does them again", () => {
    const [ana, ben] = pair();
    draw(ana, "ana-1");
    meet([ana, ben]);
    draw(ben, "ben-1");
    meet([ana, ben]);
    draw(ana, "ana-2");
    meet([ana, ben]);
    expect(ana.undo.undo()).toBe(true);
    meet([ana, ben]);
    expect(inkIn(ben)).toEqual(["ana-1", "ben-1"]);
    expect(ana.undo.undo()).toBe(true);
    expect(ana.undo.undo()).toBe(false);
    meet([ana, ben]);
    expect(inkIn(ben)).toEqual(["ben-1"]);
    expect(ana.undo.redo()).toBe(true);
    expect(ana.undo.redo()).toBe(true);
    expect(ana.undo.redo()).toBe(false);
    meet([ana, ben]);
    expect(inkIn(ben)).toEqual(["ana-1", "ana-2", "ben-1"]);
    expect(ben.undo.undo()).toBe(true);
    meet([ana, ben]);
    expect(inkIn(ana)).toEqual(["ana-1", "ana-2"]);
  });

  it("does not take back how the sheet was laid out", () => {
    const [ana] = pair();
    expect(ana.undo.canUndo()).toBe(false);
    expect(ana.undo.undo()).toBe(false);
    expect(ana.sheet().panels.length).toBe(9);
  });

  it("brings back another's stroke that this person rubbed out, all of one rub at once", () => {
    const [ana, ben] = pair();
    draw(ben, "ben-1");
    draw(ben, "ben-2");
    meet([ana, ben]);
    rubOut(ana.doc, ["ben-1", "ben-2", "no-such"]);
    meet([ana, ben]);
    expect(inkIn(ben)).toEqual([]);
    ana.undo.undo();
    meet([ana, ben]);
    expect(inkIn(ben)).toEqual(["ben-1", "ben-2"]);
  });

  it("brings a stroke back once when two rubbed it out and both undo", () => {
    const [ana, ben] = pair();
    draw(ana, "ana-1");
    meet([ana, ben]);
    rubOut(ana.doc, ["ana-1"]);
    rubOut(ben.doc, ["ana-1"]);
    meet([ana, ben]);
    ana.undo.undo();
    ben.undo.undo();
    meet([ana, ben]);
    expect(inkIn(ana)).toEqual(["ana-1"]);
    expect(inkIn(ben)).toEqual(["ana-1"]);
  });

  it("brings back a removed panel with what others did to it since", () => {
    const [ana, ben] = pair();
    const panel = firstPanel(ana);
    removePanel(ana.doc, panel);
    placeMark(ben.doc, panel, "side", "head", { x: 5, y: 6, precision: 1 });
    slidePanel(ben.doc, panel, 2);
    draw(ben, "ben-1");
    meet([ana, ben]);
    expect(ben.sheet().panels.length).toBe(8);
    ana.undo.undo();
    meet([ana, ben]);
    const back = ben.sheet().panels.find(({ id }) => id === panel);
    expect(back).toMatchObject({ frame: 2, marks: { side: { head: { x: 5 } } } });
    expect(back?.ink.side.map(({ id }) => id)).toEqual(["ben-1"]);
  });

  it("keeps what others marked in a panel whose making is undone and done again", () => {
    const [ana, ben] = pair();
    addPanel(ana.doc, "newpanel", { frame: 40, pose: "up", weightOn: "left" });
    meet([ana, ben]);
    ana.undo.undo();
    placeMark(ben.doc, "newpanel", "front", "neck", { x: 7, y: 8, precision: 1 });
    meet([ana, ben]);
    for (const peer of [ana, ben]) expect(peer.sheet().panels.length).toBe(9);
    ana.undo.redo();
    meet([ana, ben]);
    for (const peer of [ana, ben]) {
      expect(peer.sheet().panels.at(-1)).toMatchObject({
        id: "newpanel",
        frame: 40,
        pose: "up",
        weightOn: "left",
        marks: { front: { neck: { x: 7, y: 8, precision: 1 } } },
      });
    }
  });

  it("leaves a mark that another moved later, and goes on to the step before", () => {
    const [ana, ben] = pair();
    const panel = firstPanel(ana);
    draw(ana, "ana-1");
    placeMark(ana.doc, panel, "side", "head", { x: 1, y: 1, precision: 1 });
    meet([ana, ben]);
    placeMark(ben.doc, panel, "side", "head", { x: 2, y: 2, precision: 2 });
    meet([ana, ben]);
    expect(ana.undo.undo()).toBe(true);
    expect(ana.sheet().panels[0]?.marks.side.head?.x).toBe(2);
    expect(inkIn(ana)).toEqual([]);
  });

  it("goes in the order of the deeds over both documents, past those with no effect", () => {
    const [ana, ben] = pair();
    const notes = (peer: Peer) => [...peer.critique.getMap("notes").keys()].sort();
    const note = (peer: Peer, id: string) =>
      peer.critique.transact(() => peer.critique.getMap("notes").set(id, id), ORIGIN.hand);
    draw(ana, "ana-1");
    note(ana, "note-1");
    draw(ana, "ana-2");
    note(ana, "note-2");
    draw(ana, "ana-3");
    meet([ana, ben]);
    rubOut(ben.doc, ["ana-3"]); // so her last step has nothing left to take back
    meet([ana, ben]);
    const seen: unknown[] = [];
    while (ana.undo.undo()) seen.push([inkIn(ana), notes(ana)]);
    expect(seen).toEqual([
      [["ana-1", "ana-2"], ["note-1"]],
      [["ana-1"], ["note-1"]],
      [["ana-1"], []],
      [[], []],
    ]);
    while (ana.undo.redo()) seen.push(0);
    expect([inkIn(ana), notes(ana)]).toEqual([
      ["ana-1", "ana-2"],
      ["note-1", "note-2"],
    ]);
    ana.undo.undo();
    draw(ana, "ana-4");
    expect(ana.undo.canRedo()).toBe(false);
  });

  it("tells when it can do something else now, and lets go when closed", () => {
    const [ana] = pair();
    const told = vi.fn();
    const stop = ana.undo.subscribe(told);
    draw(ana, "ana-1");
    expect(told).toHaveBeenCalledTimes(1);
    expect([ana.undo.canUndo(), ana.undo.canRedo()]).toEqual([true, false]);
    ana.undo.undo();
    expect(told).toHaveBeenCalledTimes(2);
    expect([ana.undo.canUndo(), ana.undo.canRedo()]).toEqual([false, true]);
    stop();
    ana.undo.close();
    draw(ana, "ana-2");
    expect(told).toHaveBeenCalledTimes(2);
    expect(ana.undo.canUndo()).toBe(false);
  });
});
