import { describe, expect, it } from "vitest";
import {
  drawStroke,
  liftMark,
  openCritiqueView,
  openSheetView,
  type PanelId,
  placeMark,
  readCritique,
  readSheet,
  removePanel,
  SheetError,
  slidePanel,
} from "../../../lib/sheet";
import { dice } from "../../support/dice";
import { meet, type Peer, peers } from "../../support/peers";
import { scribbleOnce, TURNS } from "../../support/scribble";
import { strokeOf } from "../../support/strokes";

const given = Number(process.env.SEED);
const SEEDS = Number.isInteger(given) && given > 0 ? [given] : [11, 202, 3003, 40404, 505050, 66];

describe.each(SEEDS)("three documents under dice (SEED=%i)", (seed) => {
  it("end with the same sheet, and each view equals a fresh reading after every turn", () => {
    const throws = dice(seed);
    const people = peers(3);
    const views = people.map(({ doc }) => openSheetView(doc));
    const said = people.map(({ critique }) => openCritiqueView(critique));
    const done = new Set<string>();
    for (let turn = 0; turn < 300; turn++) {
      const who = throws.below(people.length);
      done.add(scribbleOnce(people, who, throws));
      people.forEach(({ doc }, i) => {
        // Some views are looked at only now and then, so that changes gather in them.
        if (i === who || throws.below(3) === 0) {
          expect(views[i]?.getSnapshot()).toEqual(readSheet(doc));
        }
        expect(views[i]?.skipped()).toEqual([]);
      });
      people.forEach(({ critique }, i) => {
        expect(said[i]?.getSnapshot()).toEqual(readCritique(critique));
        expect(said[i]?.skipped()).toEqual([]);
      });
    }
    expect([...done].sort()).toEqual([...TURNS].sort());
    meet(people);
    meet(people);
    const [first, ...others] = people.map((person) => person.sheet());
    for (const other of others) expect(other).toEqual(first);
    people.forEach(({ doc }, i) => {
      expect(views[i]?.getSnapshot()).toEqual(readSheet(doc));
    });
    const [words, ...otherWords] = people.map(({ critique }) => readCritique(critique));
    for (const other of otherWords) expect(other).toEqual(words);
    expect(first?.panels.some(({ ink }) => ink.side.length + ink.front.length > 0)).toBe(true);
  });
});

describe("when two do it at once", () => {
  const both = (): { ana: Peer; ben: Peer; panel: PanelId } => {
    const people = peers(2);
    const ana = people[0] as Peer;
    const ben = people[1] as Peer;
    return { ana, ben, panel: ana.sheet().panels[2]?.id ?? "" };
  };
  const panelOf = (peer: Peer, id: PanelId) => peer.sheet().panels.find((one) => one.id === id);

  it("keeps both first marks of a panel nobody marked before", () => {
    const { ana, ben, panel } = both();
    placeMark(ana.doc, panel, "side", "left-knee", { x: 1, y: 2, precision: 3 });
    placeMark(ben.doc, panel, "side", "right-knee", { x: 4, y: 5, precision: 6 });
    meet([ana, ben]);
    for (const peer of [ana, ben]) {
      expect(panelOf(peer, panel)?.marks.side).toEqual({
        "left-knee": { x: 1, y: 2, precision: 3 },
        "right-knee": { x: 4, y: 5, precision: 6 },
      });
    }
  });

  it("never mixes two placings of one mark", () => {
    const { ana, ben, panel } = both();
    placeMark(ana.doc, panel, "side", "head", { x: 1, y: 1, precision: 1 });
    placeMark(ben.doc, panel, "side", "head", { x: 9, y: 9, precision: 9 });
    meet([ana, ben]);
    const mark = panelOf(ana, panel)?.marks.side.head;
    expect([1, 9]).toContain(mark?.x);
    expect(new Set([mark?.x, mark?.y, mark?.precision]).size).toBe(1);
    expect(panelOf(ben, panel)?.marks.side.head).toEqual(mark);
  });

  it("lets a placing stand against a lifting", () => {
    const { ana, ben, panel } = both();
    placeMark(ana.doc, panel, "side", "head", { x: 1, y: 1, precision: 1 });
    meet([ana, ben]);
    liftMark(ana.doc, panel, "side", "head");
    placeMark(ben.doc, panel, "side", "head", { x: 2, y: 2, precision: 2 });
    meet([ana, ben]);
    expect(panelOf(ana, panel)?.marks.side.head).toEqual({ x: 2, y: 2, precision: 2 });
  });

  it("keeps what was drawn into a panel while another removed it", () => {
    const { ana, ben, panel } = both();
    removePanel(ana.doc, panel);
    drawStroke(ben.doc, "bensInk1", strokeOf([[1, 2, 1]], { panel }));
    meet([ana, ben]);
    expect(panelOf(ben, panel)).toBeUndefined();
    ana.undo.undo();
    meet([ana, ben]);
    expect(panelOf(ben, panel)?.ink.side.map(({ id }) => id)).toEqual(["bensInk1"]);
  });

  it("leaves one panel where two slid it to", () => {
    const { ana, ben, panel } = both();
    slidePanel(ana.doc, panel, 8);
    slidePanel(ben.doc, panel, 9);
    meet([ana, ben]);
    expect(ana.sheet().panels.length).toBe(9);
    expect([8, 9]).toContain(panelOf(ana, panel)?.frame);
    expect(panelOf(ben, panel)).toEqual(panelOf(ana, panel));
  });

  it("says so when a panel is not on the sheet, and changes nothing", () => {
    const { ana } = both();
    const before = ana.sheet();
    const mark = { x: 1, y: 1, precision: 1 };
    for (const act of [
      () => placeMark(ana.doc, "nowhere1", "side", "head", mark),
      () => slidePanel(ana.doc, "nowhere1", 3),
      () => removePanel(ana.doc, "nowhere1"),
      () => drawStroke(ana.doc, "strokeAA", strokeOf([[1, 2, 1]], { panel: "nowhere1" })),
    ]) {
      expect(act).toThrow(SheetError);
      expect(act).toThrow("no panel nowhere1 on this sheet");
    }
    expect(ana.sheet()).toEqual(before);
  });
});
