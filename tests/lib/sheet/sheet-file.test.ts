import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import {
  MAX_SHEET_FILE_BYTES,
  readSheet,
  readSheetFile,
  type Sheet,
  sheetFileText,
  toSheetFile,
  writeSheet,
} from "../../../lib/sheet";
import { dice } from "../../support/dice";
import { meet, type Peer, peers } from "../../support/peers";
import { scribbleOnce } from "../../support/scribble";
import { anyStroke } from "../../support/strokes";
import { inked, refusal, SOME_INK } from "./inked-file";
import { validate } from "./published-schema";

/** A file has everything but the pictures under the paper. */
function withoutPictures({ head, panels }: Sheet): Sheet {
  const pictures = { side: null, front: null };
  return { head, panels: panels.map((panel) => ({ ...panel, pictures })) };
}

describe("a sheet file", () => {
  it("gives back the whole sheet, ink to the last bit of its codec", () => {
    fc.assert(
      fc.property(fc.array(anyStroke, { maxLength: 5 }), (strokes) => {
        const sheet = inked(strokes);
        expect(readSheetFile(sheetFileText(sheet))).toEqual(sheet);
      }),
      { numRuns: 60 },
    );
  });

  it.each([5, 55, 556])("gives back what people made of a sheet (SEED=%i)", (seed) => {
    const throws = dice(seed);
    const people = peers(2);
    for (let turn = 0; turn < 120; turn++) scribbleOnce(people, throws.below(2), throws);
    meet(people);
    const drawn = (people[0] as Peer).sheet();
    const text = sheetFileText(drawn);
    const sheet = withoutPictures(drawn);
    expect(sheet).not.toEqual(drawn); // some had been put under the paper
    expect(readSheetFile(text)).toEqual(sheet);
    expect(sheetFileText(readSheetFile(text))).toBe(text);
    const doc = new Y.Doc();
    writeSheet(doc, readSheetFile(text));
    expect(readSheet(doc)).toEqual(sheet);
    expect(validate(JSON.parse(text))).toBe(true);
  });

  it("is read with or without the mark that some editors put before a text", () => {
    expect(readSheetFile(`\uFEFF${sheetFileText(SOME_INK)}`)).toEqual(SOME_INK);
    expect(refusal("\uFEFF").message).toBe("expected JSON, got an empty file");
    expect(refusal(`\uFEFF\uFEFF${sheetFileText(SOME_INK)}`).code).toBe("not-json");
  });

  it("is JSON of the same object, with a stroke's points on one line", () => {
    const text = sheetFileText(SOME_INK);
    expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(toSheetFile(SOME_INK))));
    expect(text).toContain('"points": [[100.0625,200,0.508],[110,190,1]]');
  });

  it("puts panels and strokes in order, in whichever order the file has them", () => {
    const file = JSON.parse(sheetFileText(SOME_INK));
    file.panels.reverse();
    file.onPurpose.reverse();
    expect(readSheetFile(JSON.stringify(file))).toEqual(SOME_INK);
  });

  it("is read from before anything could be kept on purpose, or be to redraw", () => {
    const { onPurpose: _, ...rest } = SOME_INK;
    const toRedraw = { side: false, front: false };
    const older = { ...rest, panels: rest.panels.map((panel) => ({ ...panel, toRedraw })) };
    const text = sheetFileText(older);
    expect(text).not.toMatch(/onPurpose|toRedraw/);
    expect(readSheetFile(text)).toEqual(older);
    expect(validate(JSON.parse(text))).toBe(true);
  });

  it("says what it is, to whoever reads it as something else", () => {
    expect(refusal("").message).toBe("expected JSON, got an empty file");
    expect(refusal("").code).toBe("not-json");
    expect(refusal("HIERARCHY\nROOT Hips").code).toBe("not-json");
    expect(refusal("[]").message).toBe('expected format "heelstrip-sheet", got []');
    expect(refusal('{"format":"another"}').code).toBe("foreign");
    expect(refusal("null").code).toBe("foreign");
    const newer = { ...toSheetFile(SOME_INK), version: 2, more: [] };
    expect(refusal(JSON.stringify(newer)).code).toBe("newer-version");
    expect(refusal(JSON.stringify(newer)).message).toContain("expected version 1, got 2");
  });

  it("is refused when it is too large, before it is looked into", () => {
    const error = refusal(" ".repeat(MAX_SHEET_FILE_BYTES + 1));
    expect(error.code).toBe("too-large");
    expect(error.message).toBe("expected up to 16.0 MiB, got 16.0 MiB");
  });

  it("is refused when it is cut short anywhere", () => {
    const text = sheetFileText(SOME_INK).trimEnd();
    for (let length = 0; length < text.length; length += 97) {
      expect(refusal(text.slice(0, length)).code).toBe("not-json");
    }
  });

  it("is refused in one line however deep its damage lies", () => {
    const deep = `${'{"a":'.repeat(5000)}1${"}".repeat(5000)}`;
    const file = sheetFileText(SOME_INK).replace('"title": ', `"title": ${deep}, "x": `);
    expect(refusal(file).code).toBe("damaged");
    expect(refusal(file).message).not.toContain("\n");
  });
});
