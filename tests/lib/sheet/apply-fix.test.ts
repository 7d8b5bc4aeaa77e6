import { describe, expect, it } from "vitest";
import { JOINTS, type JointName } from "../../../lib/body";
import type { FixChange } from "../../../lib/gait";
import { applyFix, placeMark } from "../../../lib/sheet";
import { meet, type Peer, peers } from "../../support/peers";

const noId = (): never => {
  throw new Error("no panel is added here");
};
const first = (peer: Peer) => {
  const [panel] = peer.sheet().panels;
  if (panel === undefined) throw new Error("a sheet is laid out with panels");
  return panel;
};
const sideOf = (peer: Peer) => first(peer).marks.side;

/** Two people at one sheet whose first panel has both heels and one toe marked from the side. */
function marked(): [Peer, Peer] {
  const [ana, ben] = peers(2) as [Peer, Peer];
  const put = (joint: JointName, x: number) =>
    placeMark(ana.doc, first(ana).id, "side", joint, { x, y: 1080, precision: 2 });
  put("left-heel", 300);
  put("right-heel", 420);
  put("left-toe", 380);
  meet([ana, ben]);
  return [ana, ben];
}

const exchange = (peer: Peer): FixChange => ({
  kind: "exchange-sides",
  panel: first(peer).id,
  view: "side",
  joints: ["heel", "toe"],
});

/** Undoes until the sheet is as it was; how many times that took. */
function undoneTo(peer: Peer, before: string, now: () => string): number {
  for (let times = 1; times <= 5; times++) {
    peer.undo.undo();
    if (now() === before) return times;
  }
  return Number.NaN;
}

describe("exchanging the sides of a panel", () => {
  it("puts left marks under right names and right under left, a lone one too", () => {
    const [ana, ben] = marked();
    applyFix(ana.doc, { changes: [exchange(ana)] }, noId);
    meet([ana, ben]);
    expect(sideOf(ben)).toEqual({
      "left-heel": { x: 420, y: 1080, precision: 2 },
      "right-heel": { x: 300, y: 1080, precision: 2 },
      "right-toe": { x: 380, y: 1080, precision: 2 },
    });
  });

  it("touches no other joint, view or panel, and twice leaves all as it was", () => {
    const [ana] = marked();
    const before = ana.sheet();
    applyFix(ana.doc, { changes: [exchange(ana)] }, noId);
    expect(ana.sheet().panels.slice(1)).toEqual(before.panels.slice(1));
    expect(first(ana).marks.front).toEqual(before.panels[0]?.marks.front);
    applyFix(ana.doc, { changes: [exchange(ana)] }, noId);
    expect(ana.sheet()).toEqual(before);
  });

  it("is taken back as one edit, and done again as one", () => {
    const [ana, ben] = marked();
    const now = () => JSON.stringify(JOINTS.map((joint) => sideOf(ana)[joint] ?? null));
    const before = now();
    applyFix(ana.doc, { changes: [exchange(ana)] }, noId);
    const after = now();
    expect(after).not.toBe(before);
    expect(undoneTo(ana, before, now)).toBe(1);
    ana.undo.redo();
    expect(now()).toBe(after);
    meet([ana, ben]);
    expect(sideOf(ben)).toEqual(sideOf(ana));
  });

  it("leaves one exchange where two people make it at once", () => {
    const [ana, ben] = marked();
    applyFix(ana.doc, { changes: [exchange(ana)] }, noId);
    applyFix(ben.doc, { changes: [exchange(ben)] }, noId);
    meet([ana, ben]);
    expect(sideOf(ana)["left-heel"]?.x).toBe(420);
    expect(sideOf(ben)).toEqual(sideOf(ana));
  });

  it("asks for a panel that is there", () => {
    const [ana] = marked();
    const before = ana.sheet();
    const gone = { ...exchange(ana), panel: "gone" } as FixChange;
    expect(() => applyFix(ana.doc, { changes: [gone] }, noId)).toThrow(/no panel gone/);
    expect(ana.sheet()).toEqual(before);
  });
});

describe("letting the ground go by at another pace", () => {
  const advance = (to: number): FixChange => ({ kind: "advance", advance: to });

  it("sets the sheet's advance for everyone, and no panel", () => {
    const [ana, ben] = marked();
    const before = ana.sheet();
    applyFix(ana.doc, { changes: [advance(0.0625)] }, noId);
    meet([ana, ben]);
    expect(ben.sheet().head).toEqual({ ...before.head, advance: 0.0625 });
    expect(ben.sheet().panels).toEqual(before.panels);
  });

  it("is taken back as one edit together with what it came with", () => {
    const [ana] = marked();
    const now = () => JSON.stringify([ana.sheet().head.advance, sideOf(ana)]);
    const before = now();
    applyFix(ana.doc, { changes: [advance(0.0625), exchange(ana)] }, noId);
    expect(now()).not.toBe(before);
    expect(undoneTo(ana, before, now)).toBe(1);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %f, and writes nothing at all", (to) => {
    const [ana] = marked();
    const before = ana.sheet();
    const both = [exchange(ana), advance(to)];
    expect(() => applyFix(ana.doc, { changes: both }, noId)).toThrow(RangeError);
    expect(ana.sheet()).toEqual(before);
  });
});
