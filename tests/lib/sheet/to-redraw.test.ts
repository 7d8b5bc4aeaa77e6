import { describe, expect, it } from "vitest";
import type { Fix } from "../../../lib/gait";
import { type Stroke, UNSHAPED } from "../../../lib/ink";
import {
  applyFix,
  capturedExample,
  copyFoot,
  copyPose,
  drawStroke,
  footOnFootprint,
  mirrorPose,
  openSheetView,
  placeMark,
  placeMarks,
  readSheet,
  redrawDone,
  rubOut,
  rubOutPart,
  SheetError,
  shiftBody,
  transformStrokes,
} from "../../../lib/sheet";
import { ids, meet, type Peer, peers } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

const IN_HAND = 4; // the right contact
const NO_INK = { ink: false, newId: () => "unwanted" };
const noId = () => "unwanted";
const at = (peer: Peer, index: number) => {
  const panel = peer.sheet().panels[index];
  if (panel === undefined) throw new RangeError(`no panel ${index}`);
  return panel;
};
const toRedraw = (peer: Peer, index = IN_HAND) => at(peer, index).toRedraw;
const BOTH = { side: true, front: true };
const NEITHER = { side: false, front: false };

/** A captured walk, each of its panels drawn in both views by one stroke. */
function drawn(): [Peer, Peer] {
  const [ana, ben] = peers(2, capturedExample(ids())) as [Peer, Peer];
  ana.sheet().panels.forEach(({ id: panel }, i) => {
    drawStroke(ana.doc, `side-${i}`, line({ panel, view: "side" }));
    drawStroke(ana.doc, `front-${i}`, line({ panel, view: "front" }));
  });
  meet([ana, ben]);
  return [ana, ben];
}

function line(rest: Partial<Stroke>): Stroke {
  const points = [
    [0, 0, 1],
    [9, 9, 1],
  ] as const;
  return strokeOf(points, rest);
}

const moving = (peer: Peer, view: "side" | "front" = "side"): Fix => ({
  title: "Move the head",
  changes: [
    { kind: "move-marks", panel: at(peer, IN_HAND).id, view, marks: [{ joint: HIP, x: 1, y: 2 }] },
  ],
});
const HIP = "left-hip";
const fix = (peer: Peer) => applyFix(peer.doc, moving(peer), noId);

const MOVES: Readonly<Record<string, (peer: Peer) => unknown>> = {
  copyPose: (peer) => copyPose(peer.doc, at(peer, 0), at(peer, IN_HAND), NO_INK),
  mirrorPose: (peer) => mirrorPose(peer.doc, at(peer, 0), at(peer, IN_HAND), NO_INK),
  copyFoot: (peer) =>
    copyFoot(peer.doc, at(peer, 3), at(peer, IN_HAND), { ...NO_INK, side: "left" }),
  shiftBody: (peer) => shiftBody(peer.doc, at(peer, IN_HAND), { forward: 0, up: -12, aside: 0 }),
  applyFix: fix,
};

describe.each(Object.keys(MOVES))("%s", (name) => {
  it("leaves the drawn views whose marks it moves to redraw, and undo takes that back", () => {
    const [ana] = drawn();
    const before = ana.sheet();
    MOVES[name]?.(ana);
    expect(toRedraw(ana).side).toBe(true);
    const others = ana.sheet().panels.filter((_, i) => i !== IN_HAND);
    expect(others.every((panel) => !panel.toRedraw.side && !panel.toRedraw.front)).toBe(true);
    ana.undo.undo();
    expect(ana.sheet()).toEqual(before);
    ana.undo.redo();
    expect(toRedraw(ana).side).toBe(true);
  });

  it("leaves nothing to redraw where nothing is drawn", () => {
    const [ana] = peers(1, capturedExample(ids())) as [Peer];
    MOVES[name]?.(ana);
    expect(toRedraw(ana)).toEqual(NEITHER);
  });
});

describe("a figure that moved", () => {
  it("is to redraw in both views where both moved", () => {
    const [ana] = drawn();
    copyPose(ana.doc, at(ana, 0), at(ana, IN_HAND), NO_INK);
    expect(toRedraw(ana)).toEqual(BOTH);
  });

  it("is not to redraw when its foot went to its footprint undrawn, and is when drawn", () => {
    const [ana] = drawn();
    footOnFootprint(ana.doc, ana.sheet(), at(ana, 2).id, "left");
    expect(toRedraw(ana, 2).side).toBe(true);
  });

  it("is not to redraw where the ink came along", () => {
    const [ana] = drawn();
    let fresh = 0;
    const newId = () => `fresh-${fresh++}`;
    fix(ana);
    copyPose(ana.doc, at(ana, 0), at(ana, IN_HAND), { ink: true, newId });
    expect(toRedraw(ana)).toEqual(NEITHER);
  });

  it("is to redraw where it was pulled away from its ink, and not where it is fitted to it", () => {
    const [ana] = drawn();
    const pulled = { side: { [HIP]: { x: 1, y: 2, precision: 3 } }, front: {} };
    placeMarks(ana.doc, at(ana, IN_HAND).id, pulled);
    expect(toRedraw(ana)).toEqual(NEITHER);
    placeMarks(ana.doc, at(ana, IN_HAND).id, pulled, { leavesInk: true });
    expect(toRedraw(ana)).toEqual({ side: true, front: false });
    ana.undo.undo();
    expect(toRedraw(ana)).toEqual(NEITHER);
  });

  it("is not to redraw when one mark is put right by hand", () => {
    const [ana] = drawn();
    placeMark(ana.doc, at(ana, IN_HAND).id, "side", HIP, { x: 1, y: 2, precision: 3 });
    expect(toRedraw(ana)).toEqual(NEITHER);
  });
});

const INK: Readonly<Record<string, (peer: Peer) => void>> = {
  drawStroke: (peer) =>
    drawStroke(peer.doc, "more-ink", line({ panel: at(peer, IN_HAND).id, view: "side" })),
  rubOut: (peer) => rubOut(peer.doc, [`side-${IN_HAND}`]),
  rubOutPart: (peer) =>
    rubOutPart(
      peer.doc,
      new Map([[`side-${IN_HAND}`, [line({ panel: at(peer, IN_HAND).id, points: [[1, 1, 1]] })]]]),
      noId,
    ),
  transformStrokes: (peer) =>
    transformStrokes(peer.doc, [`side-${IN_HAND}`], {
      shaping: { ...UNSHAPED, by: { x: 3, y: 0 } },
    }),
  "strokes taken away": (peer) =>
    transformStrokes(peer.doc, [`side-${IN_HAND}`], { panel: at(peer, 0).id }),
  "strokes brought": (peer) =>
    transformStrokes(peer.doc, ["side-0"], { panel: at(peer, IN_HAND).id }),
  "redrawDone, said by hand": (peer) => redrawDone(peer.doc, at(peer, IN_HAND).id, "side"),
};

describe.each(Object.keys(INK))("%s", (name) => {
  it("ends what was to redraw in its view alone, and undo brings that back", () => {
    const [ana, ben] = drawn();
    copyPose(ana.doc, at(ana, 1), at(ana, IN_HAND), NO_INK);
    meet([ana, ben]);
    expect(toRedraw(ben)).toEqual(BOTH);
    const before = ben.sheet();
    INK[name]?.(ben);
    expect(toRedraw(ben)).toEqual({ side: false, front: true });
    expect(ben.undo.undo()).toBe(true);
    expect(ben.sheet()).toEqual(before);
  });
});

describe("to redraw", () => {
  it("outlasts another colour, and ink elsewhere", () => {
    const [ana] = drawn();
    fix(ana);
    transformStrokes(ana.doc, [`side-${IN_HAND}`], { colour: "blue" });
    rubOut(ana.doc, [`front-${IN_HAND}`, "side-0", "nowhere1"]);
    drawStroke(ana.doc, "more-ink", line({ panel: at(ana, 2).id }));
    expect(toRedraw(ana)).toEqual({ side: true, front: false });
  });

  it("stands when somebody draws while the figure is moved", () => {
    const [ana, ben] = drawn();
    fix(ana);
    meet([ana, ben]);
    INK.drawStroke?.(ben);
    applyFix(ana.doc, { changes: moving(ana).changes }, noId);
    meet([ana, ben]);
    expect([toRedraw(ana).side, toRedraw(ben).side]).toEqual([true, true]);
  });

  it("keeps a panel that nobody touched the same object, and tells of one that changed", () => {
    const [ana] = drawn();
    const view = openSheetView(ana.doc);
    const before = view.getSnapshot();
    fix(ana);
    const after = view.getSnapshot();
    expect(after.panels[0]).toBe(before.panels[0]);
    expect(after.panels[IN_HAND]?.toRedraw).toEqual({ side: true, front: false });
    expect(after).toEqual(readSheet(ana.doc));
    expect(view.skipped()).toEqual([]);
    view.close();
  });

  it("is said to be done on panels that are on the sheet", () => {
    const [ana] = drawn();
    expect(() => redrawDone(ana.doc, "nowhere1", "side")).toThrow(SheetError);
  });
});

describe("a fix that is made", () => {
  const changes = (peer: Peer): Fix["changes"] => {
    const { id: panel } = at(peer, 2);
    return [
      { kind: "slide", panel, frame: 9 },
      { kind: "place", panel, place: 0.5 },
      { kind: "relabel", panel, pose: "breakdown", weightOn: null },
      {
        ...{ kind: "add-panel", frame: 40, pose: "up", weightOn: "left", place: null },
        marks: at(peer, 0).marks,
      },
      ...moving(peer).changes,
    ];
  };

  it("does everything in one edit, which one undo takes back", () => {
    const [ana] = drawn();
    const before = ana.sheet();
    let updates = 0;
    ana.doc.on("update", () => updates++);
    applyFix(ana.doc, { changes: changes(ana) }, () => "newpanel");
    expect(updates).toBe(1);
    const { panels, head } = ana.sheet();
    expect(panels.find(({ id }) => id === at(ana, 2).id)).toMatchObject({
      ...{ frame: 9, place: 0.5, pose: "breakdown", weightOn: null },
    });
    expect(panels.at(-1)).toMatchObject({ id: "newpanel", frame: 40, marks: at(ana, 0).marks });
    expect(head.loop.to).toBe(40);
    expect(at(ana, IN_HAND).marks.side[HIP]).toEqual({
      ...before.panels[IN_HAND]?.marks.side[HIP],
      ...{ x: 1, y: 2 },
    });
    ana.undo.undo();
    expect(ana.sheet()).toEqual(before);
  });

  it("leaves away a mark that was lifted meanwhile", () => {
    const [ana] = drawn();
    const [change] = moving(ana).changes;
    if (change?.kind !== "move-marks") throw new Error("it moves marks");
    const marks = [{ joint: "load", x: 1, y: 2 }] as const;
    applyFix(ana.doc, { changes: [{ ...change, marks }] }, noId);
    expect(at(ana, IN_HAND).marks.side.load).toBeUndefined();
    expect(toRedraw(ana)).toEqual(NEITHER);
  });

  it("writes nothing when one of its changes is none", () => {
    const [ana] = drawn();
    const before = ana.sheet();
    const wrong: Fix["changes"] = [
      { kind: "slide", panel: at(ana, 0).id, frame: 0 },
      { kind: "slide", panel: "nowhere1", frame: 3 },
      { kind: "place", panel: at(ana, 0).id, place: Number.NaN },
    ];
    for (const one of wrong) {
      expect(() =>
        applyFix(ana.doc, { changes: [...changes(ana), one] }, () => "newpanel"),
      ).toThrow();
    }
    expect(ana.sheet()).toEqual(before);
  });
});
