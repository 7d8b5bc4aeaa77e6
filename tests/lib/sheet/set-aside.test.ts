import { describe, expect, it } from "vitest";
import type * as Y from "yjs";
import {
  addPanel,
  type Change,
  changesIn,
  defaultBrief,
  doAgain,
  drawStroke,
  handOverChanges,
  keepOnPurpose,
  layOut,
  placeMark,
  readCritique,
  readSheet,
  readSheetFile,
  removePanel,
  rubOut,
  sheetFileText,
} from "../../../lib/sheet";
import { dice } from "../../support/dice";
import { ids, type Peer, peers } from "../../support/peers";
import { scribbleOnce } from "../../support/scribble";
import { strokeOf } from "../../support/strokes";

const seed = Number(process.env.SEED ?? Date.now() % 1e6);
const STRIP = layOut(defaultBrief, ids());
const FIRST = STRIP.panels[0]?.id ?? "";

function two(): [Peer, Peer] {
  const [ana, ben] = peers(2, STRIP);
  return [ana as Peer, ben as Peer];
}

/** Notes what is changed in a document, transaction by transaction. */
function noting(doc: Y.Doc): Change[][] {
  const noted: Change[][] = [];
  doc.on("update", (_update, _origin, _doc, transaction) => {
    noted.push([...changesIn(transaction)]);
  });
  return noted;
}

describe("work that is set aside", () => {
  it(`makes the same sheet when it is done again in a fresh document (SEED=${seed})`, () => {
    const [ana, ben] = two();
    const drawn = noting(ana.doc);
    const said = noting(ana.critique);
    const throws = dice(seed);
    for (let turn = 0; turn < 300; turn++) scribbleOnce([ana], 0, throws);
    for (const changes of drawn) expect(doAgain(ben.doc, "drawing", changes)).toEqual([]);
    for (const changes of said) expect(doAgain(ben.critique, "critique", changes)).toEqual([]);
    expect(readSheet(ben.doc)).toEqual(readSheet(ana.doc));
    expect(readCritique(ben.critique)).toEqual(readCritique(ana.critique));
  });

  it("is one step of undo for each that it was before", () => {
    const [ana, ben] = two();
    const drawn = noting(ana.doc);
    drawStroke(ana.doc, "strokeAA", strokeOf([[1, 2, 1]], { panel: FIRST }));
    placeMark(ana.doc, FIRST, "side", "head", { x: 300, y: 640, precision: 2 });
    for (const changes of drawn) doAgain(ben.doc, "drawing", changes);
    ben.undo.undo();
    const [panel] = ben.sheet().panels;
    expect(panel?.ink.side).toHaveLength(1);
    expect(panel?.marks.side).toEqual({});
  });

  it("says what cannot be done again, and does the rest", () => {
    const [ana, ben] = two();
    addPanel(ana.doc, "newPanel", { frame: 30, pose: "breakdown", weightOn: null });
    const drawn = noting(ana.doc);
    drawStroke(ana.doc, "strokeAA", strokeOf([[1, 2, 1]], { panel: "newPanel" }));
    drawStroke(ana.doc, "strokeBB", strokeOf([[1, 2, 1]], { panel: FIRST }));
    const notDone = drawn.flatMap((changes) => doAgain(ben.doc, "drawing", changes));
    expect(notDone).toEqual([
      { change: expect.objectContaining({ key: "strokeAA" }), why: "panel-missing" },
    ]);
    expect(ben.sheet().panels[0]?.ink.side.map(({ id }) => id)).toEqual(["strokeBB"]);
  });

  it("puts nothing into a document that a verb would not put there", () => {
    const [ben] = two();
    const before = readSheet(ben.doc);
    const bad: readonly Omit<Change, "panel">[] = [
      { part: "strokes", key: "strokeAA", value: Uint8Array.of(255, 1) },
      { part: "sheet", key: "framesPerSecond", value: -1 },
      { part: "sheet", key: "__proto__", value: {} },
      { part: "elsewhere", key: "a", value: 1 },
      { part: "panels", key: "panelAAA", value: 7 },
    ];
    const inPanel = { part: "panels", panel: FIRST, key: "side.head", value: [1, Number.NaN, 0] };
    const changes = [...bad.map((change) => ({ ...change, panel: null })), inPanel];
    const whys = doAgain(ben.doc, "drawing", changes).map(({ why }) => why);
    expect(whys).toEqual(changes.map(() => "unreadable"));
    expect(readSheet(ben.doc)).toEqual(before);
  });

  it("never takes a panel's own map away from under what others put into it", () => {
    const [ana, ben] = two();
    const drawn = noting(ana.doc);
    addPanel(ana.doc, "newPanel", { frame: 30, pose: "breakdown", weightOn: null });
    addPanel(ben.doc, "newPanel", { frame: 31, pose: "up", weightOn: "left" });
    placeMark(ben.doc, "newPanel", "side", "head", { x: 300, y: 640, precision: 2 });
    for (const changes of drawn) doAgain(ben.doc, "drawing", changes);
    const panel = ben.sheet().panels.find(({ id }) => id === "newPanel");
    expect(panel).toMatchObject({ frame: 30, pose: "breakdown" });
    expect(panel?.marks.side).toHaveProperty("head");
  });
});

describe("a file of work that a sheet could not take", () => {
  it("holds everything, in panels of their own where the sheet has none", () => {
    const [ana] = two();
    const drawn = noting(ana.doc);
    const said = noting(ana.critique);
    addPanel(ana.doc, "newPanel", { frame: 30, pose: "breakdown", weightOn: null });
    drawStroke(ana.doc, "strokeAA", strokeOf([[1, 2, 1]], { panel: "newPanel" }));
    drawStroke(ana.doc, "strokeBB", strokeOf([[1, 2, 1]], { panel: FIRST }));
    keepOnPurpose(ana.critique, {
      ...{ id: "entryAAA", check: "slide", scope: { kind: "walk" }, reason: "wet", by: "Ana" },
      measured: { value: 0.1, plusMinus: 0, unit: "leg" },
    });
    const bare = { ...STRIP, panels: STRIP.panels.filter(({ id }) => id !== FIRST) };
    const handed = handOverChanges(bare, { drawing: drawn.flat(), critique: said.flat() });
    const file = readSheetFile(sheetFileText(handed));
    const inked = file.panels.filter(({ ink }) => ink.side.length > 0);
    expect(inked.map(({ id, frame }) => [id, frame])).toEqual([
      [FIRST, 26],
      ["newPanel", 30],
    ]);
    expect(file.onPurpose?.map(({ reason }) => reason)).toEqual(["wet"]);
  });

  it("hangs no panel for what was only taken away", () => {
    const [ana] = two();
    drawStroke(ana.doc, "strokeAA", strokeOf([[1, 2, 1]], { panel: FIRST }));
    const drawn = noting(ana.doc);
    rubOut(ana.doc, ["strokeAA"]);
    removePanel(ana.doc, FIRST);
    const bare = { ...STRIP, panels: STRIP.panels.filter(({ id }) => id !== FIRST) };
    const handed = handOverChanges(bare, { drawing: drawn.flat(), critique: [] });
    expect(handed.panels).toHaveLength(bare.panels.length);
  });
});
