import { describe, expect, it } from "vitest";
import {
  amendHead,
  defaultBrief,
  layOut,
  readSheetFile,
  sheetFileText,
  shotFrame,
  toSheetFile,
} from "../../../lib/sheet";
import { ids, type Peer, peers } from "../../support/peers";

function alone(): Peer {
  return peers(1, layOut(defaultBrief, ids()))[0] as Peer;
}

describe("the shot's own numbers", () => {
  it("are absent from a sheet that counts from 1, and from its file", () => {
    const ana = alone();
    expect("firstFrame" in ana.sheet().head).toBe(false);
    amendHead(ana.doc, { firstFrame: 1 });
    expect("firstFrame" in ana.sheet().head).toBe(false);
    expect("firstFrame" in toSheetFile(ana.sheet()).head).toBe(false);
  });

  it("are kept by the document and by the file, and leave the sheet's frames as they are", () => {
    const ana = alone();
    const before = ana.sheet().panels;
    amendHead(ana.doc, { firstFrame: 1001 });
    const sheet = ana.sheet();
    expect(sheet.head.firstFrame).toBe(1001);
    expect(sheet.panels).toEqual(before);
    expect(readSheetFile(sheetFileText(sheet))).toEqual(sheet);
    expect(sheet.panels.map(({ frame }) => shotFrame(frame, sheet.head)).at(-1)).toBe(1025);
    ana.undo.undo();
    expect("firstFrame" in ana.sheet().head).toBe(false);
  });

  it("are refused where they are none, by the verb and by the file", () => {
    const ana = alone();
    expect(() => amendHead(ana.doc, { firstFrame: 1.5 })).toThrow(/firstFrame that is a whole/);
    const file = toSheetFile(ana.sheet());
    const text = JSON.stringify({ ...file, head: { ...file.head, firstFrame: "1001" } });
    expect(() => readSheetFile(text)).toThrow(/head.firstFrame: expected a whole number/);
  });

  it("may begin below 1", () => {
    expect([1, 9].map((frame) => shotFrame(frame, { firstFrame: -7 }))).toEqual([-7, 1]);
  });
});
