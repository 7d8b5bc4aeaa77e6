import { describe, expect, it } from "vitest";
import type { LineState } from "../../../app/_room/document-line";
import {
  type InkState,
  inkStateOf,
  leavesUnsaved,
  sheetInkState,
  takesInk,
} from "../../../app/_room/ink-state";
import { shutCauseOf } from "../../../app/_room/shut-cause";
import { CLOSE, isFinal } from "../../../shared/close-code";

const GOOD: LineState = {
  ...{ connected: true, synced: true, sent: 3, saved: 3, waiting: 0, unsent: false, kept: true },
  ...{ closed: null, refused: null, outdated: false, storage: "ok", hello: null, role: null },
};
const SENT: LineState = { ...GOOD, sent: 4, waiting: 1 };
const DOWN: LineState = { ...GOOD, connected: false, synced: false, sent: 0, saved: 0 };
const DRAWN_DOWN: LineState = { ...DOWN, waiting: 1, unsent: true };
const SHUT: LineState = { ...DOWN, closed: CLOSE.revoked };
const REFUSED: LineState = { ...SENT, refused: { frame: 4, code: "full", message: "" } };

const sheet = (lines: readonly LineState[], lost = false, inHand = false) =>
  sheetInkState(lines, { everSynced: true, lost, inHand });

describe("what is said of one document's ink", () => {
  it("is saved only while the line is up, the exchange finished, and every frame counted", () => {
    expect(inkStateOf(GOOD, true)).toBe("saved");
    expect(inkStateOf({ ...GOOD, sent: 4 }, true)).toBe("saving");
    expect(inkStateOf({ ...GOOD, synced: false }, true)).toBe("opening");
    expect(inkStateOf(DOWN, true)).toBe("offline");
    expect(inkStateOf(DOWN, false)).toBe("opening"); // nothing was drawn before the sheet was there
  });

  it("is kept only where all that waits is on this machine's disk", () => {
    expect(inkStateOf(DRAWN_DOWN, true)).toBe("kept");
    expect(inkStateOf({ ...DRAWN_DOWN, kept: false }, true)).toBe("not-saved");
  });

  it("is not called saving before it is handed over", () => {
    const opened: LineState = { ...DRAWN_DOWN, connected: true };
    expect(inkStateOf(opened, true)).toBe("kept");
    expect(inkStateOf({ ...opened, kept: false }, true)).toBe("not-saved");
    expect(inkStateOf({ ...opened, unsent: false, sent: 1 }, true)).toBe("saving");
  });

  it("tells a hub that cannot write by what waits for it", () => {
    for (const storage of ["full", "failing"] as const) {
      expect(inkStateOf({ ...SENT, storage }, true)).toBe("unwritten-kept");
      expect(inkStateOf({ ...SENT, storage, kept: false }, true)).toBe("unwritten");
      expect(inkStateOf({ ...GOOD, storage }, true)).toBe("saved"); // what was saved before stays so
    }
    expect(inkStateOf({ ...SENT, storage: "slow" }, true)).toBe("saving");
  });

  it("is refused until the sheet is opened afresh", () => {
    expect(inkStateOf(REFUSED, true)).toBe("refused");
    expect(inkStateOf({ ...GOOD, outdated: true }, true)).toBe("refused");
  });
});

describe("leaving the page", () => {
  it("is warned of exactly while the hub has not saved something", () => {
    for (const line of [GOOD, DOWN, SHUT]) expect(leavesUnsaved(line)).toBe(false);
    const unsaved = [SENT, DRAWN_DOWN, REFUSED, { ...SHUT, waiting: 1 }];
    for (const line of unsaved) expect(leavesUnsaved(line)).toBe(true);
  });
});

describe("two lines of one sheet", () => {
  it("are told as the worse of the two", () => {
    expect(sheet([GOOD, SENT])).toBe("saving");
    expect(sheet([DOWN, GOOD])).toBe("offline");
    expect(sheet([DRAWN_DOWN, DOWN])).toBe("kept");
    expect(sheet([{ ...DRAWN_DOWN, kept: false }, DRAWN_DOWN])).toBe("not-saved");
    expect(sheet([SHUT, DRAWN_DOWN])).toBe("shut");
  });

  it("never call ink saved that waits for its answer while the other line has fallen", () => {
    expect(sheet([DOWN, SENT])).toBe("kept");
    expect(sheet([{ ...SENT, kept: false }, DOWN])).toBe("not-saved");
  });

  it("are never called saved while work lies in the drawer that the sheet would not take", () => {
    expect(sheet([GOOD, GOOD], true)).toBe("refused");
    expect(sheet([DOWN, DOWN], true)).toBe("refused");
    expect(sheet([SHUT, SHUT], true)).toBe("shut");
  });
});

describe("what is under a pen", () => {
  const held = (...lines: LineState[]) => sheet(lines, false, true);

  it("is never among what is called saved, or kept", () => {
    expect(held(GOOD, GOOD)).toBe("in-hand");
    expect(held(DOWN, DOWN)).toBe("in-hand-unsaved");
    expect(held(DRAWN_DOWN, DOWN)).toBe("in-hand-unsaved");
    expect(held({ ...SENT, storage: "full" }, GOOD)).toBe("in-hand-unsaved");
  });

  it("changes no word that promises nothing", () => {
    expect(held(SENT, GOOD)).toBe("saving");
    expect(held({ ...DRAWN_DOWN, kept: false }, DOWN)).toBe("not-saved");
    expect(held(REFUSED, GOOD)).toBe("refused");
    expect(held(SHUT, SHUT)).toBe("shut");
  });
});

describe("new ink", () => {
  it("is taken unless the door is shut for good", () => {
    const states: readonly InkState[] = ["saved", "saving", "not-saved", "kept", "refused"];
    expect(states.filter((state) => !takesInk(state))).toEqual([]);
    expect(takesInk("shut")).toBe(false);
  });
});

describe("why the door is shut", () => {
  it("is told apart for every code that is final", () => {
    const shut = Object.values(CLOSE).filter(isFinal);
    const causes = shut.filter((code) => code !== CLOSE.otherGeneration).map(shutCauseOf); // opens afresh
    expect(new Set(causes).size).toBe(causes.length);
    expect(causes).toContain("revoked");
    expect(shutCauseOf("no-way-in")).toBe("no-way-in");
  });
});
