import { describe, expect, it } from "vitest";
import { PANEL } from "../../../lib/body";
import {
  capturedExample,
  copyFoot,
  copyPose,
  footOnFootprint,
  mirrorPose,
  ORIGIN,
  type PanelId,
  placeMark,
  readSheet,
  removePanel,
  SheetError,
  shiftBody,
} from "../../../lib/sheet";
import { ids, meet, type Peer, peers } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

const walk = () => capturedExample(ids());
const people = () => {
  const [ana, ben] = peers(2, walk());
  return { ana: ana as Peer, ben: ben as Peer };
};
const at = (peer: Peer, index: number) => {
  const panel = peer.sheet().panels[index];
  if (panel === undefined) throw new RangeError(`no panel ${index}`);
  return panel;
};
const byId = (peer: Peer, id: PanelId) => peer.sheet().panels.find((panel) => panel.id === id);
const noInk = { ink: false, newId: () => "unwanted" };
const DOWN_A_LITTLE = { forward: 0, up: -0.03 * PANEL.plainLeg, aside: 0 };

/** Each verb of passing on, done on a captured walk. */
const VERBS: Readonly<Record<string, (peer: Peer) => unknown>> = {
  copyPose: (peer) => copyPose(peer.doc, at(peer, 0), at(peer, 1), noInk),
  mirrorPose: (peer) => mirrorPose(peer.doc, at(peer, 0), at(peer, 4), noInk),
  copyFoot: (peer) => copyFoot(peer.doc, at(peer, 1), at(peer, 2), { ...noInk, side: "left" }),
  footOnFootprint: (peer) => footOnFootprint(peer.doc, peer.sheet(), at(peer, 2).id, "left"),
  shiftBody: (peer) => shiftBody(peer.doc, at(peer, 2), DOWN_A_LITTLE),
};

describe.each(Object.keys(VERBS))("%s", (name) => {
  it("is one edit by hand, taken back in one step", () => {
    const { ana } = people();
    const before = ana.sheet();
    const origins: unknown[] = [];
    ana.doc.on("update", (_update: Uint8Array, origin: unknown) => origins.push(origin));
    expect(VERBS[name]?.(ana)).toMatchObject({ kind: "passing" });
    expect(origins).toEqual([ORIGIN.hand]);
    const done = ana.sheet();
    expect(done).not.toEqual(before);
    expect(ana.undo.undo()).toBe(true);
    expect(ana.sheet()).toEqual(before);
    expect(ana.undo.undo()).toBe(false);
    ana.undo.redo();
    expect(ana.sheet()).toEqual(done);
  });
});

describe("passing on", () => {
  it("writes nothing where it cannot", () => {
    const { ana } = people();
    const before = ana.sheet();
    const same = at(ana, 0);
    expect(copyPose(ana.doc, same, same, noInk).kind).toBe("cannot");
    expect(shiftBody(ana.doc, same, { forward: 0, up: 300, aside: 0 }).kind).toBe("cannot");
    expect(footOnFootprint(ana.doc, before, "nowhere1", "left").kind).toBe("cannot");
    expect(ana.sheet()).toEqual(before);
    expect(ana.undo.canUndo()).toBe(false);
  });

  it("says so when the panel never was on the sheet, and refuses what is no mark or id", () => {
    const { ana } = people();
    const from = at(ana, 0);
    const nowhere = { ...at(ana, 1), id: "nowhere1" };
    expect(() => copyPose(ana.doc, from, nowhere, noInk)).toThrow(SheetError);
    const torn = { x: Number.NaN, y: 0, precision: 0 };
    const marks = { side: { head: torn }, front: {} };
    expect(() => copyPose(ana.doc, { ...from, marks }, at(ana, 1), noInk)).toThrow(
      /passing on needs a mark that is/,
    );
    const ink = { side: [{ id: "inkinkin", ...strokeOf([[1, 2, 1]]) }], front: [] };
    const drawn = { ...from, ink };
    expect(() => copyPose(ana.doc, drawn, at(ana, 1), { ink: true, newId: () => "no id" })).toThrow(
      /an id of/,
    );
  });

  it("gives ink new ids and leaves the old where it is", () => {
    const { ana } = people();
    const ink = { side: [{ id: "inkinkin", ...strokeOf([[1, 2, 1]]) }], front: [] };
    let given = 0;
    const newId = () => `fresh00${given++}`;
    copyPose(ana.doc, { ...at(ana, 0), ink }, at(ana, 1), { ink: true, newId });
    expect(at(ana, 1).ink.side.map(({ id, panel }) => [id, panel])).toEqual([
      ["fresh000", at(ana, 1).id],
    ]);
  });
});

describe("when two pass on at once", () => {
  it("leaves one of two poses, whole", () => {
    const { ana, ben } = people();
    const to = at(ana, 5).id;
    const poses = [at(ana, 0).marks, at(ana, 2).marks];
    copyPose(ana.doc, at(ana, 0), at(ana, 5), noInk);
    copyPose(ben.doc, at(ben, 2), at(ben, 5), noInk);
    meet([ana, ben]);
    expect(byId(ana, to)).toEqual(byId(ben, to));
    expect(poses).toContainEqual(byId(ana, to)?.marks);
  });

  it("shifts the body once", () => {
    const { ana, ben } = people();
    const before = at(ana, 2).marks.side["left-hip"];
    for (const peer of [ana, ben]) shiftBody(peer.doc, at(peer, 2), DOWN_A_LITTLE);
    meet([ana, ben]);
    const hip = at(ana, 2).marks.side["left-hip"];
    expect(hip?.y).toBeCloseTo((before?.y ?? 0) - DOWN_A_LITTLE.up, 1);
    expect(at(ben, 2)).toEqual(at(ana, 2));
  });

  it("keeps a mark that another placed where the pose has none", () => {
    const { ana, ben } = people();
    const load = { x: 1, y: 2, precision: 3 };
    copyPose(ana.doc, at(ana, 0), at(ana, 1), noInk);
    placeMark(ben.doc, at(ben, 1).id, "side", "load", load);
    meet([ana, ben]);
    expect(at(ana, 1).marks.side.load).toEqual(load);
    expect(at(ana, 1).marks.side.head).toEqual(at(ana, 0).marks.side.head);
  });

  it("keeps a pose given to a panel that another removed, for when it is back", () => {
    const { ana, ben } = people();
    const to = at(ana, 1).id;
    removePanel(ana.doc, to);
    copyPose(ben.doc, at(ben, 0), at(ben, 1), noInk);
    meet([ana, ben]);
    expect(readSheet(ben.doc).panels.some(({ id }) => id === to)).toBe(false);
    ana.undo.undo();
    meet([ana, ben]);
    expect(byId(ben, to)?.marks).toEqual(at(ben, 0).marks);
  });
});
