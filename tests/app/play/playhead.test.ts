import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { frameAt, panelAt, runOf } from "../../../app/_play/playhead";
import { addPanel, layOut, readSheet, type Sheet, writeSheet } from "../../../lib/sheet";
import { BRIEF_DEFAULTS } from "../../../shared/brief-defaults";

function strip(over: Partial<typeof BRIEF_DEFAULTS> = {}): Sheet {
  let count = 0;
  return layOut({ ...BRIEF_DEFAULTS, ...over }, () => `panel${count++}`);
}

describe("a run", () => {
  it("loops from contact to contact and shows the closing contact once", () => {
    expect(runOf(strip())).toMatchObject({ first: 1, loopFrom: 1, loopFrames: 24, tailFrames: 0 });
  });
  it("goes through the lead-in once", () => {
    const run = runOf(strip({ leadIn: true }));
    expect(run).toMatchObject({ first: 1, loopFrom: 13, loopFrames: 24, tailFrames: 0 });
  });
  it("shows a last pose that is not the first again as long as the one before it", () => {
    const sheet = strip();
    const panels = sheet.panels.slice(0, -1); // the closing contact has left: 22 is the last, an up
    expect(runOf({ ...sheet, panels })).toMatchObject({ loopFrom: 1, loopFrames: 24 });
  });
  it("plays what was added behind the closing contact, which the loop takes in", () => {
    const doc = new Y.Doc();
    writeSheet(doc, strip());
    addPanel(doc, "added", { frame: 29, pose: "down", weightOn: "left" });
    const run = runOf(readSheet(doc));
    expect(run).toMatchObject({ first: 1, loopFrom: 1, loopFrames: 32, tailFrames: 0 });
    if (run === null) throw new Error("it has a run");
    const frames = Array.from({ length: 32 }, (_, n) => frameAt(run, n / 24, 24, null));
    expect(frames).toContain(29);
  });
  it("loops one step where the loop is set to one", () => {
    const sheet = strip();
    const run = runOf({ ...sheet, head: { ...sheet.head, loop: { from: 13, to: 25 } } });
    expect(run).toMatchObject({ first: 1, loopFrom: 13, loopFrames: 12, tailFrames: 0 });
    const left = runOf({ ...sheet, head: { ...sheet.head, loop: { from: 1, to: 13 } } });
    // 13 to 24, and the closing contact for as long as the up before it.
    expect(left).toMatchObject({ loopFrom: 1, loopFrames: 12, tailFrom: 13, tailFrames: 15 });
  });
  it("is none on an empty strip, and one frame long on a single panel", () => {
    const sheet = strip();
    expect(runOf({ ...sheet, panels: [] })).toBeNull();
    expect(runOf({ ...sheet, panels: sheet.panels.slice(0, 1) })?.loopFrames).toBe(1);
  });
});

describe("the playhead", () => {
  const run = { first: 1, loopFrom: 13, loopFrames: 24, tailFrom: 37, tailFrames: 6 };
  it.each([
    { seconds: 0, frame: 1 },
    { seconds: 0.04, frame: 1 },
    { seconds: 1 / 24, frame: 2 },
    { seconds: 11 / 24, frame: 12 },
    { seconds: 12 / 24, frame: 13 },
    { seconds: 35 / 24, frame: 36 },
    { seconds: 36 / 24, frame: 13 },
    { seconds: 3600, frame: 13 + ((86_400 - 12) % 24) },
  ])("stands at frame $frame after $seconds s at 24 a second", ({ seconds, frame }) => {
    expect(frameAt(run, seconds, 24, null)).toBe(frame);
  });
  it.each([
    { cycles: 2, count: 36, frame: 13 },
    { cycles: 2, count: 59, frame: 36 },
    { cycles: 2, count: 60, frame: 37 },
    { cycles: 2, count: 65, frame: 42 },
    { cycles: 2, count: 66, frame: 1 }, // the way in again
    { cycles: 1, count: 36, frame: 37 },
    { cycles: 1, count: 42, frame: 1 },
  ] as const)("with ×$cycles stands at $frame after $count frames", ({ cycles, count, frame }) => {
    expect(frameAt(run, count / 24, 24, cycles)).toBe(frame);
  });
});

describe("the panel that shows", () => {
  const hip = { x: 360, y: 660, precision: 3 };
  const panels = strip().panels.map((panel) => ({
    ...panel,
    marks: { ...panel.marks, side: { "left-hip": hip } },
  }));
  it("is the last one drawn while the next ones are bare", () => {
    const [first, ...bare] = panels.map((panel, index) =>
      index < 1 ? panel : { ...panel, marks: { side: {}, front: {} } },
    );
    expect(
      panelAt(
        [first ?? panels[0], ...bare].filter((panel) => panel !== undefined),
        16,
        1,
      ),
    ).toBe(first);
    expect(panelAt(strip().panels, 16, 1)).toBeUndefined();
  });
  it.each([
    { frame: 1, shows: 1 },
    { frame: 3, shows: 1 },
    { frame: 4, shows: 4 },
    { frame: 24, shows: 22 },
  ])("is the one at $shows while frame $frame is on", ({ frame, shows }) => {
    expect(panelAt(panels, frame, 1)?.frame).toBe(shows);
  });
  it("stays on while it is held, also over the next one's frame", () => {
    const held = panels.map((panel) => (panel.frame === 4 ? { ...panel, hold: 4 } : panel));
    const shows = (frame: number, exposure: 1 | 2) => panelAt(held, frame, exposure)?.frame;
    expect([7, 8, 9, 10].map((frame) => shows(frame, 1))).toEqual([4, 4, 7, 10]);
    expect([8, 9, 10].map((frame) => shows(frame, 2))).toEqual([4, 4, 10]); // a frame more on twos
  });
});
