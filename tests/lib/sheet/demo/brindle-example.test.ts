import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { type JointName, type Mark, PANEL } from "../../../../lib/body";
import { reviewWalk } from "../../../../lib/gait";
import { VIEWS } from "../../../../lib/geometry";
import {
  brindleExample,
  type HandedSheet,
  type Panel,
  readSheet,
  readSheetFile,
  type Sheet,
  sheetFileText,
  walkOf,
  writeSheet,
} from "../../../../lib/sheet";
import { ids } from "../../../support/peers";

const sheet = brindleExample(ids());

const remarksOn = (of: HandedSheet) =>
  reviewWalk(walkOf(of), "trade", of.onPurpose).remarks.filter(({ level }) => level !== "tidy");

const panelAt = (frame: number): Panel => {
  const panel = sheet.panels.find((one) => one.frame === frame);
  if (panel === undefined) throw new RangeError(`no panel at frame ${frame}`);
  return panel;
};

const markAt = (panel: Panel, joint: JointName, view: "side" | "front" = "side"): Mark => {
  const mark = panel.marks[view][joint];
  if (mark === undefined) throw new RangeError(`no ${joint} at frame ${panel.frame}`);
  return mark;
};

/** The sheet with one panel put right: some marks of both views moved, by panel units. */
function mended(
  from: HandedSheet,
  frame: number,
  joints: RegExp,
  by: { x?: number; y?: number; frame?: number },
) {
  const moved = (marks: Panel["marks"]["side"], x: number, y: number) =>
    Object.fromEntries(
      Object.entries(marks).map(([joint, mark]) => [
        joint,
        joints.test(joint) ? { ...mark, x: mark.x + x, y: mark.y + y } : mark,
      ]),
    );
  const { x = 0, y = 0 } = by;
  return {
    ...from,
    panels: from.panels.map((panel) =>
      panel.frame === frame
        ? {
            ...panel,
            frame: by.frame ?? frame,
            marks: { side: moved(panel.marks.side, x, y), front: moved(panel.marks.front, 0, y) },
          }
        : panel,
    ),
  };
}

describe("the demo's strip", () => {
  it("holds stand, lead-in and a cycle, its last up hung two frames late", () => {
    expect(sheet.panels.map(({ frame, pose }) => `${frame} ${pose}`)).toEqual([
      ...["1 stand", "7 lead-in"],
      ...["13 contact", "16 down", "19 passing", "22 up"],
      ...["25 contact", "28 down", "31 passing", "36 up"],
      "37 contact",
    ]);
    expect(sheet.head).toMatchObject({ framesPerSecond: 24, yardstick: "trade", kind: "heavy" });
    expect(sheet.head.credit).toMatch(/invented/);
  });

  it("closes the cycle on the contact that began it", () => {
    expect(panelAt(37).marks).toEqual(panelAt(13).marks);
  });

  it("is the same drawing each time, under new ids", () => {
    expect(brindleExample(ids())).toEqual(sheet);
    const other = brindleExample(ids(8));
    const bare = (of: Sheet) =>
      JSON.stringify(of, (key, value) => (key === "id" || key === "panel" ? "" : value));
    expect(bare(other)).toBe(bare(sheet));
    const all = sheet.panels.flatMap(({ id, ink }) => [
      id,
      ...[...ink.side, ...ink.front].map((stroke) => stroke.id),
    ]);
    all.push(...(sheet.onPurpose ?? []).map(({ id }) => id));
    expect(new Set(all).size).toBe(all.length);
  });

  it("comes back whole from a document and from a file", () => {
    const doc = new Y.Doc();
    writeSheet(doc, sheet);
    const { onPurpose: _, ...drawn } = sheet;
    expect(readSheet(doc)).toEqual(drawn);
    expect(readSheetFile(sheetFileText(sheet))).toEqual(sheet);
  });

  it("is small enough to open at once: under 300 kB, some 60 to 165 strokes a view", () => {
    const doc = new Y.Doc();
    writeSheet(doc, sheet);
    expect(Y.encodeStateAsUpdate(doc).length).toBeLessThan(300_000);
    for (const { frame, ink } of sheet.panels) {
      for (const view of VIEWS) {
        const many = ink[view].length;
        expect(many >= 60 && many <= 165, `${many} strokes, ${view}, frame ${frame}`).toBe(true);
      }
    }
  });
});

describe("what is kept on purpose in the demo", () => {
  it("is the low left shoulder, in the whole walk, and nothing of it has lapsed", () => {
    const { kept, lapsed } = reviewWalk(walkOf(sheet), "trade", sheet.onPurpose);
    expect(kept.map(({ remark, entry }) => [remark.title, entry.scope.kind])).toEqual([
      ["Left shoulder stays low", "walk"],
    ]);
    expect(kept[0]?.remark.level).toBe("may-show");
    expect(kept[0]?.entry.reason).toMatch(/sack/);
    expect(lapsed).toEqual([]);
  });
});

describe("what is planted in the demo", () => {
  it("is exactly what the trade's yardstick remarks", () => {
    const remarks = remarksOn(sheet).map(({ check, side, frames }) => [check, side, frames]);
    expect(remarks).toHaveLength(3);
    expect(remarks).toContainEqual(["hip-order", "right", [25, 28]]);
    expect(remarks).toContainEqual(["slide", "left", [16, 19]]);
    expect(remarks).toContainEqual(["gaps", "right", [31, 36, 37]]);
    expect(reviewWalk(walkOf(sheet), "trade").cannotTell).toEqual([]);
  });

  const sunk = { y: 0.05 * PANEL.plainLeg };
  const back = { x: -0.064 * PANEL.plainLeg };
  const upper = /hip|head|neck|shoulder|elbow|wrist|load/;
  const leftFoot = /left-(ankle|heel|ball|toe)/;

  it.each([
    ["hip-order", mended(sheet, 28, upper, sunk)],
    ["slide", mended(sheet, 19, leftFoot, back)],
    ["gaps", mended(sheet, 36, /^$/, { frame: 34 })],
  ] as const)("is mended one by one: %s", (check, better) => {
    const left = remarksOn(better).map((remark) => remark.check);
    expect(left).toHaveLength(2);
    expect(left).not.toContain(check);
  });

  it("is all there is: mended, nothing is left to say", () => {
    const better = mended(mended(mended(sheet, 28, upper, sunk), 19, leftFoot, back), 36, /^$/, {
      frame: 34,
    });
    expect(remarksOn(better)).toEqual([]);
  });

  it("leaves the low left shoulder, which is meant, in every panel", () => {
    for (const panel of sheet.panels) {
      const lower = markAt(panel, "left-shoulder", "front").y;
      expect(lower - markAt(panel, "right-shoulder", "front").y).toBeGreaterThan(
        0.05 * PANEL.plainLeg,
      );
    }
  });
});

/** Panel units from a mark to the nearest point of graphite in its view. */
function inkFrom(panel: Panel, view: "side" | "front", joint: JointName): number {
  const mark = markAt(panel, joint, view);
  const points = panel.ink[view]
    .filter(({ nib }) => nib !== "under")
    .flatMap((stroke) => stroke.points);
  return Math.min(...points.map(([x, y]) => Math.hypot(x - mark.x, y - mark.y)));
}

describe("the demo's marks", () => {
  it("lie under its ink: soles and hands are where they were drawn", () => {
    for (const panel of sheet.panels) {
      // His right side is near us, so nothing hides it: a sole runs along its own marks.
      for (const joint of ["right-heel", "right-ball", "right-toe"] as const) {
        expect(inkFrom(panel, "side", joint)).toBeLessThan(0.05 * PANEL.plainLeg);
      }
      expect(inkFrom(panel, "side", "right-wrist")).toBeLessThan(0.1 * PANEL.plainLeg);
      expect(inkFrom(panel, "front", "left-wrist")).toBeLessThan(0.1 * PANEL.plainLeg);
    }
  });

  it("keep every bone's length, told by both views together", () => {
    const bones: readonly (readonly [JointName, JointName])[] = [
      ["left-hip", "left-knee"],
      ["right-hip", "right-knee"],
      ["left-knee", "left-ankle"],
      ["right-knee", "right-ankle"],
      ["right-shoulder", "right-elbow"],
      ["right-elbow", "right-wrist"],
      ["left-shoulder", "left-elbow"],
      ["left-elbow", "left-wrist"],
      ["left-hip", "right-hip"],
    ];
    const stand = panelAt(1);
    const length = (panel: Panel, a: JointName, b: JointName) => {
      const side = markAt(panel, a).x - markAt(panel, b).x;
      const height = markAt(panel, a).y - markAt(panel, b).y;
      const front = markAt(panel, a, "front").x - markAt(panel, b, "front").x;
      return Math.hypot(side, height, front);
    };
    for (const panel of sheet.panels) {
      for (const [a, b] of bones) {
        expect(length(panel, a, b)).toBeCloseTo(length(stand, a, b), 0); // marks: a hundredth
      }
    }
  });

  it("agree in height between the views", () => {
    for (const { marks } of sheet.panels) {
      for (const [joint, { y }] of Object.entries(marks.side)) {
        expect(marks.front[joint as JointName]?.y).toBe(y);
      }
    }
  });
});
