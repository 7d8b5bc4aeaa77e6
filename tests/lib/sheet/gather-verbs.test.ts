import { describe, expect, it } from "vitest";
import { type InkPoint, UNSHAPED } from "../../../lib/ink";
import {
  drawStroke,
  ORIGIN,
  rubOut,
  rubOutPart,
  SheetError,
  transformStrokes,
} from "../../../lib/sheet";
import { meet, type Peer, peers } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

const LINE: readonly InkPoint[] = [
  [0, 0, 1],
  [100, 0, 1],
];
const people = () => {
  const [ana, ben] = peers(2) as [Peer, Peer];
  const panel = ana.sheet().panels[0]?.id ?? "";
  const next = ana.sheet().panels[1]?.id ?? "";
  for (const id of ["one00001", "two00002"]) drawStroke(ana.doc, id, strokeOf(LINE, { panel }));
  meet([ana, ben]);
  return { ana, ben, panel, next };
};
const inkOf = (peer: Peer) => peer.sheet().panels.flatMap(({ ink }) => [...ink.side, ...ink.front]);
const strokeIn = (peer: Peer, id: string) => inkOf(peer).find((stroke) => stroke.id === id);
const moveBy = (x: number, y: number) => ({ shaping: { ...UNSHAPED, by: { x, y } } });
const piecesOf = (peer: Peer, id: string, ...spans: readonly (readonly [number, number])[]) => {
  const { id: _id, ...stroke } = strokeIn(peer, id) ?? { id, ...strokeOf(LINE) };
  const part = ([from, to]: readonly [number, number]) => ({
    ...stroke,
    points: [
      [from, 0, 1],
      [to, 0, 1],
    ] as InkPoint[],
  });
  return new Map([[id, spans.map(part)]]);
};

describe("gathered strokes", () => {
  it("are moved, scaled and recoloured under their ids in one edit, and taken back in one", () => {
    const { ana } = people();
    const before = ana.sheet();
    const origins: unknown[] = [];
    ana.doc.on("update", (_update: Uint8Array, origin: unknown) => origins.push(origin));
    transformStrokes(ana.doc, ["one00001", "two00002"], {
      colour: "blue",
      shaping: { about: { x: 0, y: 0 }, scale: 2, turn: 0, by: { x: 5, y: 7 } },
    });
    expect(origins).toEqual([ORIGIN.hand]);
    for (const id of ["one00001", "two00002"]) {
      expect(strokeIn(ana, id)).toMatchObject({
        colour: "blue",
        width: 8,
        points: [
          [5, 7, 1],
          [205, 7, 1],
        ],
      });
    }
    ana.undo.undo();
    expect(ana.sheet()).toEqual(before);
  });

  it("go to another panel and view", () => {
    const { ana, next } = people();
    transformStrokes(ana.doc, ["one00001"], { panel: next, view: "front" });
    expect(ana.sheet().panels[1]?.ink.front.map(({ id }) => id)).toEqual(["one00001"]);
    expect(ana.sheet().panels[0]?.ink.side.map(({ id }) => id)).toEqual(["two00002"]);
    expect(() => transformStrokes(ana.doc, ["one00001"], { panel: "nowhere1" })).toThrow(
      SheetError,
    );
  });

  it("are there once when two move them at once, whole", () => {
    const { ana, ben } = people();
    transformStrokes(ana.doc, ["one00001"], moveBy(10, 0));
    transformStrokes(ben.doc, ["one00001"], moveBy(0, 20));
    meet([ana, ben]);
    expect(inkOf(ana)).toEqual(inkOf(ben));
    const at = strokeIn(ana, "one00001")?.points[0];
    expect([
      [10, 0, 1],
      [0, 20, 1],
    ]).toContainEqual(at);
    expect(inkOf(ana).length).toBe(2);
  });

  it("stay rubbed out when they were before", () => {
    const { ana, ben } = people();
    rubOut(ben.doc, ["one00001"]);
    meet([ana, ben]);
    transformStrokes(ana.doc, ["one00001", "no-such1"], moveBy(1, 1));
    expect(inkOf(ana).map(({ id }) => id)).toEqual(["two00002"]);
    expect(ana.undo.undo()).toBe(true); // her drawing: the moving left nothing to take back
  });

  it("refuse a shaping that is none, with nothing written", () => {
    const { ana } = people();
    const before = ana.sheet();
    expect(() => transformStrokes(ana.doc, ["one00001"], moveBy(Number.NaN, 0))).toThrow(
      /finite x/,
    );
    expect(ana.sheet()).toEqual(before);
  });
});

describe("a stroke rubbed out in part", () => {
  const fresh = () => {
    let given = 0;
    return () => `fresh00${given++}`;
  };

  it("leaves its pieces, the first under its own id, in one edit", () => {
    const { ana } = people();
    const before = ana.sheet();
    rubOutPart(ana.doc, piecesOf(ana, "one00001", [0, 40], [60, 100]), fresh());
    expect(strokeIn(ana, "one00001")?.points).toEqual([
      [0, 0, 1],
      [40, 0, 1],
    ]);
    expect(strokeIn(ana, "fresh000")?.points[0]).toEqual([60, 0, 1]);
    ana.undo.undo();
    expect(ana.sheet()).toEqual(before);
  });

  it("is gone when nothing of it stays, and is not brought back when it was gone", () => {
    const { ana } = people();
    rubOutPart(ana.doc, piecesOf(ana, "one00001"), fresh());
    expect(inkOf(ana).map(({ id }) => id)).toEqual(["two00002"]);
    rubOutPart(ana.doc, piecesOf(ana, "one00001", [0, 10], [20, 30]), fresh());
    expect(inkOf(ana).map(({ id }) => id)).toEqual(["two00002"]);
  });

  it("loses nothing that either keeps when two rub at it at once", () => {
    const { ana, ben } = people();
    rubOutPart(ana.doc, piecesOf(ana, "one00001", [0, 40], [60, 100]), () => "fromAna1");
    rubOutPart(ben.doc, piecesOf(ben, "one00001", [0, 80]), () => "fromBen1");
    meet([ana, ben]);
    expect(inkOf(ana)).toEqual(inkOf(ben));
    const spans = inkOf(ana)
      .filter(({ id }) => id !== "two00002")
      .map(({ points }) => [points[0]?.[0], points.at(-1)?.[0]]);
    expect(spans).toContainEqual([60, 100]);
    expect(spans.some(([from, to]) => from === 0 && (to ?? 0) >= 40)).toBe(true);
    expect(spans.length).toBe(2);
  });
});
