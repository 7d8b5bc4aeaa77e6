import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import type { OnPurpose } from "../../../lib/gait";
import {
  drawStroke,
  dropOnPurpose,
  keepOnPurpose,
  openCritiqueView,
  prepareCritique,
  readCritique,
} from "../../../lib/sheet";
import { meet, type Peer, peers } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

const entry = (id: string, changes: Partial<OnPurpose> = {}): OnPurpose => ({
  id,
  check: "slide",
  scope: { kind: "side", side: "left" },
  reason: "wet planks",
  measured: { value: 0.08, plusMinus: 0.01, unit: "leg" },
  by: "Ana",
  ...changes,
});
const two = (): [Peer, Peer] => {
  const [ana, ben] = peers(2);
  return [ana as Peer, ben as Peer];
};
const kept = (peer: Peer) => readCritique(peer.critique).onPurpose;

describe("the critique document", () => {
  it("holds what is kept on purpose, by id, and gives it back whole", () => {
    const [ana, ben] = two();
    const scopes = [
      entry("bbbbbbbb", { scope: { kind: "walk" }, reason: "" }),
      entry("aaaaaaaa", { scope: { kind: "panel", panel: "panel-01", side: null } }),
      entry("cccccccc", { check: "symmetry", subject: "shoulders" }),
    ];
    for (const one of scopes) keepOnPurpose(ana.critique, one);
    meet([ana, ben]);
    expect(kept(ben).map(({ id }) => id)).toEqual(["aaaaaaaa", "bbbbbbbb", "cccccccc"]);
    expect(kept(ben)).toEqual(scopes.toSorted((a, b) => (a.id < b.id ? -1 : 1)));
    dropOnPurpose(ben.critique, "bbbbbbbb");
    meet([ana, ben]);
    expect(kept(ana).map(({ id }) => id)).toEqual(["aaaaaaaa", "cccccccc"]);
  });

  it("is undone in one order with the drawing", () => {
    const [ana] = two();
    const panel = ana.sheet().panels[0]?.id ?? "";
    const ink = () => ana.sheet().panels[0]?.ink.side.length;
    keepOnPurpose(ana.critique, entry("aaaaaaaa"));
    drawStroke(ana.doc, "stroke-1", strokeOf([[1, 2, 1]], { panel }));
    dropOnPurpose(ana.critique, "aaaaaaaa");
    expect([kept(ana).length, ink()]).toEqual([0, 1]);
    ana.undo.undo();
    expect([kept(ana).length, ink()]).toEqual([1, 1]);
    ana.undo.undo();
    expect([kept(ana).length, ink()]).toEqual([1, 0]);
    ana.undo.undo();
    expect([kept(ana).length, ink()]).toEqual([0, 0]);
    for (let turn = 0; turn < 3; turn++) ana.undo.redo();
    expect([kept(ana).length, ink()]).toEqual([0, 1]);
  });

  it("keeps both entries of two who keep one thing, and one of two wordings, whole", () => {
    const [ana, ben] = two();
    keepOnPurpose(ana.critique, entry("aaaaaaaa"));
    meet([ana, ben]);
    keepOnPurpose(ana.critique, entry("aaaaaaaa", { reason: "one", by: "Ana" }));
    keepOnPurpose(ben.critique, entry("aaaaaaaa", { reason: "other", by: "Ben" }));
    keepOnPurpose(ben.critique, entry("bbbbbbbb", { by: "Ben" }));
    meet([ana, ben]);
    expect(kept(ana)).toEqual(kept(ben));
    expect(kept(ana)).toHaveLength(2);
    expect(["one Ana", "other Ben"]).toContain(`${kept(ana)[0]?.reason} ${kept(ana)[0]?.by}`);
  });

  it("begins with what a handed-over sheet keeps, which nobody can undo", () => {
    const doc = new Y.Doc();
    prepareCritique(doc, [entry("aaaaaaaa")]);
    expect(readCritique(doc).onPurpose).toEqual([entry("aaaaaaaa")]);
    expect(() => prepareCritique(new Y.Doc(), [entry("aaaaaaaa", { by: "x".repeat(41) })])).toThrow(
      "prepareCritique needs by that is text of up to 40 characters",
    );
  });

  it("refuses what is no entry and writes nothing", () => {
    const [ana] = two();
    const wrong: readonly Partial<OnPurpose>[] = [
      { id: "no id" },
      { reason: "x".repeat(501) },
      { subject: "nose" as "hips" },
      { measured: { value: Number.NaN, plusMinus: 0, unit: "leg" } },
      { measured: { value: 1, plusMinus: -1, unit: "leg" } },
      { scope: { kind: "panel", panel: "", side: null } },
    ];
    for (const changes of wrong) {
      expect(() => keepOnPurpose(ana.critique, entry("aaaaaaaa", changes))).toThrow(RangeError);
    }
    expect(kept(ana)).toEqual([]);
    expect(ana.undo.canUndo()).toBe(false);
  });
});

describe("a view of the critique", () => {
  it("keeps its snapshot and its entries until they change, and skips what it cannot read", () => {
    const [ana, ben] = two();
    const view = openCritiqueView(ana.critique);
    let calls = 0;
    const stop = view.subscribe(() => calls++);
    const empty = view.getSnapshot();
    expect(view.getSnapshot()).toBe(empty);
    keepOnPurpose(ana.critique, entry("aaaaaaaa"));
    const [first] = view.getSnapshot().onPurpose;
    keepOnPurpose(ben.critique, entry("bbbbbbbb"));
    meet([ana, ben]);
    expect(view.getSnapshot().onPurpose[0]).toBe(first);
    expect(view.getSnapshot()).toEqual(readCritique(ana.critique));
    ben.critique.getMap("on-purpose").set("strange1", { check: "posture of a later version" });
    meet([ana, ben]);
    expect(view.skipped()).toEqual(["strange1"]);
    expect(view.getSnapshot().onPurpose).toHaveLength(2);
    expect(calls).toBe(3);
    stop();
    view.close();
    dropOnPurpose(ana.critique, "aaaaaaaa");
    expect(calls).toBe(3);
  });
});
