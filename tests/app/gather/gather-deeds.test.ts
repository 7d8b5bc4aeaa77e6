import { describe, expect, it } from "vitest";
import {
  gatheredStrokes,
  letGo,
  recolourGathered,
  rubOutGathered,
  shapeAboutMiddle,
  shapeGathered,
} from "../../../app/_gather/gather-deeds";
import { pressGathered } from "../../../app/_gather/gather-keys";
import type { Room } from "../../../app/_room";
import { createWorkspace } from "../../../app/_workspace";
import { UNSHAPED } from "../../../lib/ink";
import { drawStroke, openSheetView, rubOut } from "../../../lib/sheet";
import { peers } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

const IDS = ["stroke01", "stroke02"];

/** Two lines on the first panel's side view, both gathered. */
function board() {
  const [peer] = peers(1);
  if (peer === undefined) throw new Error("nobody came");
  const sheet = openSheetView(peer.doc);
  const room = { drawing: peer.doc, sheet, undo: peer.undo } as unknown as Room;
  const workspace = createWorkspace();
  const panel = sheet.getSnapshot().panels[0]?.id ?? "";
  for (const [n, id] of IDS.entries()) {
    const line = [100, 200].map((x): [number, number, number] => [x, 100 * (n + 1), 1]);
    drawStroke(peer.doc, id, { ...strokeOf(line), panel, view: "side" });
  }
  workspace.getState().take("gather");
  workspace.getState().gather({ panel, view: "side", ids: IDS });
  const held = () => gatheredStrokes(room, workspace.getState().gathered);
  const firsts = () => held().map(({ points }) => points[0]?.slice(0, 2));
  return { ...peer, room, workspace, held, firsts, panels: sheet.getSnapshot().panels };
}

describe("what is done with gathered strokes", () => {
  it("shapes them about their common middle, as one step of undo", () => {
    const { room, workspace, firsts, undo } = board();
    shapeAboutMiddle(room, workspace, { turn: Math.PI });
    expect(firsts()).toEqual([
      [200, 200],
      [200, 100],
    ]);
    undo.undo();
    expect(firsts()).toEqual([
      [100, 100],
      [100, 200],
    ]);
  });

  it("takes them to another paper, which comes into the hand with them", () => {
    const { room, workspace, held, panels, undo } = board();
    const to = { panel: panels[2]?.id ?? "", view: "front" } as const;
    shapeGathered(room, workspace, UNSHAPED, to);
    expect(held().map(({ id }) => id)).toEqual(IDS);
    expect(workspace.getState()).toMatchObject(to);
    undo.undo();
    expect(held()).toEqual([]);
    expect(room.sheet.getSnapshot().panels[0]?.ink.side).toHaveLength(2);
  });

  it("recolours those that are still there", () => {
    const { room, workspace, held, doc } = board();
    rubOut(doc, ["stroke01"]);
    recolourGathered(room, workspace, "blue");
    expect(held().map(({ id, colour }) => [id, colour])).toEqual([["stroke02", "blue"]]);
  });

  it("rubs them out once, and says when there is nothing to rub out or let go", () => {
    const { room, workspace } = board();
    expect(rubOutGathered(room, workspace)).toBe(true);
    expect(room.sheet.getSnapshot().panels[0]?.ink.side).toEqual([]);
    expect(rubOutGathered(room, workspace)).toBe(false);
    expect(letGo(room, workspace)).toBe(false);
  });

  it("leaves them alone while another tool is in the hand", () => {
    const { room, workspace, held } = board();
    workspace.getState().take("draw");
    expect([rubOutGathered(room, workspace), letGo(room, workspace)]).toEqual([false, false]);
    expect(held()).toHaveLength(2);
  });
});

describe("the keys of what is gathered", () => {
  const TWO = 2; // panel units a CSS pixel

  it.each([
    ["ArrowRight", false, [104, 100]],
    ["ArrowDown", true, [100, 140]],
  ])("%s (Shift: %s) goes two pixels, or twenty", (key, shiftKey, to) => {
    const { room, workspace, firsts } = board();
    expect(pressGathered(room, workspace, { key, shiftKey }, TWO)).toBe(true);
    expect(firsts()[0]).toEqual(to);
  });

  it("scale and turn by what the other key takes back", () => {
    const { room, workspace, firsts } = board();
    const before = firsts();
    for (const key of ["+", "."]) pressGathered(room, workspace, { key, shiftKey: false }, TWO);
    expect(firsts()).not.toEqual(before);
    for (const key of [",", "-"]) pressGathered(room, workspace, { key, shiftKey: false }, TWO);
    for (const [n, at] of firsts().entries()) {
      // Ink is kept to a sixteenth of a unit, four times over.
      expect(at?.[0]).toBeCloseTo(before[n]?.[0] ?? 0, 0);
      expect(at?.[1]).toBeCloseTo(before[n]?.[1] ?? 0, 0);
    }
  });

  it("leave every other key to the board", () => {
    const { room, workspace } = board();
    expect(pressGathered(room, workspace, { key: "n", shiftKey: false }, TWO)).toBe(false);
  });
});
