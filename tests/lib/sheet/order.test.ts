import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { reviewWalk } from "../../../lib/gait";
import {
  addPanel,
  defaultBrief,
  layOut,
  openSheetView,
  readSheet,
  readSheetFile,
  relabelPanel,
  sheetFileText,
  slidePanel,
  walkOf,
  writeSheet,
} from "../../../lib/sheet";

/** A strip whose first contact and down share frame 1, under ids of which either may be the lesser. */
function crowded(contact: string, down: string) {
  const rest = ["p2", "p3", "p4", "p5", "p6", "p7", "p8"];
  const names = [contact, down, ...rest];
  const doc = new Y.Doc();
  writeSheet(
    doc,
    layOut(defaultBrief, () => names.shift() ?? ""),
  );
  const view = openSheetView(doc);
  slidePanel(doc, down, 1);
  return { doc, view };
}

describe.each([
  ["aaaaaaaa", "zzzzzzzz"],
  ["zzzzzzzz", "aaaaaaaa"],
])("two panels on one frame, %s and %s", (contact, down) => {
  it("stand as the step runs, wherever the sheet is read", () => {
    const { doc, view } = crowded(contact, down);
    const sheet = readSheet(doc);
    expect(sheet.panels.slice(0, 3).map(({ pose }) => pose)).toEqual([
      ...["contact", "down", "passing"],
    ]);
    expect(view.getSnapshot()).toEqual(sheet);
    const file = JSON.parse(sheetFileText(sheet));
    file.panels.reverse();
    expect(readSheetFile(JSON.stringify(file))).toEqual(sheet);
  });

  it("are both of the step, whose down is drawn", () => {
    const { doc } = crowded(contact, down);
    const [step] = reviewWalk(walkOf(readSheet(doc)), "trade").steps;
    expect(step?.down?.id).toBe(down);
  });

  it("change their order with their labels", () => {
    const { doc, view } = crowded(contact, down);
    relabelPanel(doc, contact, { pose: "breakdown", weightOn: "left" });
    expect(view.getSnapshot().panels[0]?.id).toBe(down);
    expect(view.getSnapshot()).toEqual(readSheet(doc));
  });
});

describe("panels of one pose on one frame", () => {
  it("stand by their ids", () => {
    const { doc } = crowded("mmmmmmmm", "zzzzzzzz");
    addPanel(doc, "aaaaaaaa", { frame: 1, pose: "contact", weightOn: "left" });
    expect(readSheet(doc).panels.map(({ id }) => id)).toEqual([
      ...["aaaaaaaa", "mmmmmmmm", "zzzzzzzz"],
      ...["p2", "p3", "p4", "p5", "p6", "p7", "p8"],
    ]);
  });
});
