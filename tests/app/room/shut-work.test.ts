import { describe, expect, it } from "vitest";
import type { KeptWork } from "../../../app/_room/local/kept-work";
import { sheetOf, tallyOf, toldOfShut } from "../../../app/_room/set-aside";
import {
  changesIn,
  drawStroke,
  keepOnPurpose,
  placeMark,
  readSheetFile,
  sheetFileText,
} from "../../../lib/sheet";
import { peers } from "../../support/peers";
import { strokeOf } from "../../support/strokes";

/** What somebody did on a sheet, as the drawer keeps it. */
function keptOf(deed: (peer: ReturnType<typeof peers>[number], panel: string) => void): KeptWork[] {
  const [ana] = peers(1);
  if (ana === undefined) throw new Error("there is nobody");
  const kept: KeptWork[] = [];
  for (const [name, doc] of [
    ["drawing", ana.doc],
    ["critique", ana.critique],
  ] as const) {
    doc.on("update", (update, _origin, _doc, made) => {
      kept.push({
        ...{ key: ["sheet", 1000, kept.length + 1, "page"], document: name, generation: 1 },
        ...{ update, changes: changesIn(made), again: false, lost: null },
      });
    });
  }
  deed(ana, ana.sheet().panels[0]?.id ?? "");
  return kept;
}

describe("work behind a door that is shut", () => {
  const work = keptOf((ana, panel) => {
    drawStroke(ana.doc, "strokeAA", strokeOf([[100, 200, 0.5]], { panel }));
    drawStroke(ana.doc, "strokeBB", strokeOf([[300, 400, 0.5]], { panel, view: "front" }));
    placeMark(ana.doc, panel, "side", "left-knee", { x: 360, y: 800, precision: 4 });
    keepOnPurpose(ana.critique, {
      ...{ id: "entryAAA", check: "slide", scope: { kind: "side", side: "left" } },
      ...{ reason: "he skates", measured: { value: 0.08, plusMinus: 0.01, unit: "leg" } },
      ...{ by: "Ana", at: 1000 },
    });
  });

  it("can be had as a sheet file although the sheet cannot be read any more", () => {
    const text = sheetFileText(sheetOf("Brindle", work));
    const file = readSheetFile(text);
    expect(file.head.title).toBe("Brindle");
    expect(file.panels).toHaveLength(1);
    const [panel] = file.panels;
    expect(panel?.ink.side.map(({ id }) => id)).toEqual(["strokeAA"]);
    expect(panel?.ink.front.map(({ id }) => id)).toEqual(["strokeBB"]);
    expect(panel?.marks.side["left-knee"]).toMatchObject({ x: 360, y: 800 });
    expect(file.onPurpose?.map(({ reason }) => reason)).toEqual(["he skates"]);
  });

  it("is told with what was lost before, and is called lost to nobody's disk", () => {
    const before = { ...(work[0] as KeptWork), lost: "size" as const };
    const told = toldOfShut({ why: "size", doneAgain: tallyOf([]), lost: [before] }, work.slice(1));
    expect(told.why).toBe("size");
    expect(told.lost.map(({ lost }) => lost)).toEqual(["size", "shut", "shut", "shut"]);
    expect(told.lost.map(({ key }) => key[2])).toEqual([1, 2, 3, 4]);
    expect(tallyOf(told.lost)).toEqual({ strokes: 2, marks: 1, entries: 1, others: 0 });
    expect(work.every(({ lost }) => lost === null)).toBe(true); // the drawer's own entries stay as they were
  });
});
