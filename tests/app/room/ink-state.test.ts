import { describe, expect, it } from "vitest";
import type { LineState } from "../../../app/_room/document-line";
import {
  type InkState,
  inkStateOf,
  losesInk,
  takesInk,
  worseInkState,
} from "../../../app/_room/ink-state";
import { shutCauseOf } from "../../../app/_room/shut-cause";
import { CLOSE, isFinal } from "../../../shared/close-code";

const GOOD: LineState = {
  ...{ connected: true, synced: true, sent: 3, saved: 3, unsent: false, closed: null },
  ...{ refused: null, storage: "ok", hello: null, role: null },
};
const SHUT: LineState = {
  ...GOOD,
  connected: false,
  synced: false,
  closed: CLOSE.revoked,
  sent: 0,
  saved: 0,
};
const REFUSED: LineState = { ...GOOD, refused: { frame: 3, code: "full", message: "" } };

describe("leaving the page", () => {
  it("loses nothing while all is saved, and what was not handed over", () => {
    expect(losesInk(GOOD, true)).toBe(false);
    expect(losesInk({ ...GOOD, sent: 4 }, true)).toBe(true);
    expect(losesInk({ ...GOOD, connected: false, unsent: true }, true)).toBe(true);
    expect(losesInk({ ...GOOD, connected: false }, true)).toBe(false);
  });

  it("loses what a door that shut did not take", () => {
    expect(inkStateOf(SHUT, true)).toBe("shut");
    expect(losesInk(SHUT, true)).toBe(false);
    expect(losesInk({ ...SHUT, unsent: true }, true)).toBe(true);
  });

  it("loses what a line that came back has handed over and not yet heard of", () => {
    const back: LineState = { ...GOOD, synced: false, sent: 1, saved: 0 };
    expect(inkStateOf(back, true)).toBe("saving");
    expect(losesInk(back, true)).toBe(true);
    expect(inkStateOf(back, false)).toBe("opening"); // nothing was drawn before the sheet was there
  });

  it("loses what was refused", () => {
    expect(inkStateOf(REFUSED, true)).toBe("refused");
    expect(losesInk(REFUSED, true)).toBe(true);
  });
});

describe("a hub that cannot write", () => {
  const full: LineState = { ...GOOD, storage: "full" };

  it("is told by what waits for it, and leaving loses that", () => {
    const waiting = { ...full, sent: 4 };
    expect(inkStateOf(waiting, true)).toBe("unwritten");
    expect(losesInk(waiting, true)).toBe(true);
    expect(inkStateOf({ ...waiting, storage: "slow" }, true)).toBe("saving");
    expect(inkStateOf({ ...full, unsent: true }, true)).toBe("not-saved");
    expect(inkStateOf(full, true)).toBe("saved"); // what was saved before stays so
  });
});

describe("two lines of one sheet", () => {
  it("are told as the worse of the two", () => {
    expect(worseInkState("saved", "saving")).toBe("saving");
    expect(worseInkState("offline", "saved")).toBe("offline");
    expect(worseInkState("not-saved", "offline")).toBe("not-saved");
    expect(worseInkState("shut", "not-saved")).toBe("shut");
  });

  it("never call ink saved that waits for its answer while the other line has fallen", () => {
    expect(worseInkState("offline", "saving")).toBe("not-saved");
    expect(worseInkState("saving", "offline")).toBe("not-saved");
    expect(worseInkState("unwritten", "offline")).toBe("not-saved");
  });
});

describe("new ink", () => {
  it("is taken while it can still be saved, and only then", () => {
    const states: readonly InkState[] = ["saved", "saving", "not-saved", "offline", "opening"];
    expect(states.filter((state) => !takesInk(state))).toEqual([]);
    expect(takesInk("shut")).toBe(false);
    expect(takesInk("refused")).toBe(false);
  });
});

describe("why the door is shut", () => {
  it("is told apart for every code that is final", () => {
    const causes = Object.values(CLOSE).filter(isFinal).map(shutCauseOf);
    expect(causes).toEqual(["misheard", "revoked", "gone", "elsewhere", "newer-version"]);
    expect(shutCauseOf("no-way-in")).toBe("no-way-in");
  });
});
