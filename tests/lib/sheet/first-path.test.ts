import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import {
  migrate,
  openSheetView,
  readSheetCounting,
  readSheetFile,
  SCHEMA,
} from "../../../lib/sheet";
import { asReadThen, documentOfThen, sheetFileOfThen } from "../../support/first-path";

const { sheet } = asReadThen();

function documentNow(): Y.Doc {
  const doc = new Y.Doc();
  Y.applyUpdate(doc, documentOfThen("drawing"));
  migrate(doc, "drawing");
  return doc;
}

describe("a sheet that the first finished path wrote", () => {
  it("holds strokes, marks and frames enough to be looked for", () => {
    const strokes = sheet.panels.flatMap(({ ink }) => [...ink.side, ...ink.front]);
    const marks = sheet.panels.flatMap((panel) => Object.keys(panel.marks.side));
    expect(strokes.length).toBeGreaterThan(15);
    expect(marks.length).toBeGreaterThan(40);
    expect(new Set(sheet.panels.map(({ frame }) => frame)).size).toBeGreaterThan(7);
  });

  it("is read from its document as it was read then, and nothing is skipped", () => {
    const reading = readSheetCounting(documentNow());
    expect(reading.sheet).toMatchObject(sheet);
    expect(reading.skipped).toEqual([]);
  });

  it("is shown by a view as it was read then", () => {
    const view = openSheetView(documentNow());
    expect(view.getSnapshot()).toMatchObject(sheet);
    view.close();
  });

  it("is read from its file as it was read then", () => {
    expect(readSheetFile(sheetFileOfThen())).toMatchObject(sheet);
  });

  it("has a critique that today's code takes as it is", () => {
    const critique = new Y.Doc();
    Y.applyUpdate(critique, documentOfThen("critique"));
    migrate(critique, "critique");
    expect(critique.getMap("sheet").get("schema")).toBe(SCHEMA);
  });
});
