import { describe, expect, it } from "vitest";
import { countsInWords, gravestLevel } from "../../../app/_remarks/count-remarks";
import { marginMood } from "../../../app/_remarks/margin-mood";
import { marginSummary } from "../../../app/_remarks/margin-summary";
import { seenAt } from "../../../app/_remarks/seen-at";
import { type Level, type Remark, reviewWalk } from "../../../lib/gait";
import { push, raise, unmark, walk } from "../../support/walk";

const unmarked = () => {
  const drawn = walk();
  const panels = drawn.panels.map((panel) => ({ ...panel, marks: { side: {}, front: {} } }));
  return { ...drawn, panels };
};

const slipping = () =>
  reviewWalk(
    push(walk(), "right passing", ["right-heel", "right-ball", "right-toe"], 0.08),
    "trade",
  );

const leveled = (...levels: Level[]): Remark[] => {
  const [remark] = slipping().remarks;
  if (remark === undefined) throw new Error("a slip draws a remark");
  return levels.map((level) => ({ ...remark, level }));
};

describe("the margin's count line", () => {
  it("counts by level, gravest first, and leaves out what is not there", () => {
    expect(countsInWords(leveled("may-show", "shows", "shows"))).toBe("2 will show · 1 may show");
    expect(countsInWords(leveled("may-show"))).toBe("1 may show");
    expect(countsInWords(leveled("tidy", "tidy"))).toBe("2 details to tidy");
  });

  it("says what the matter is when there is nothing to count", () => {
    const nothing = { remarks: [], kept: [], toRedraw: 0 };
    expect(marginSummary(nothing, "unmarked")).toBe("nothing marked yet");
    expect(marginSummary(nothing, "sound")).toBe("nothing stands out");
  });

  it("counts what is to redraw and what is kept, and never calls ink sound that does not follow", () => {
    const found = { remarks: leveled("shows"), kept: [], toRedraw: 2 };
    expect(marginSummary(found, "remarks")).toBe("1 will show · 2 to redraw");
    const whole = reviewWalk(walk(), "trade");
    expect(marginMood("marked", whole, 1)).toBe("redraw");
    expect(marginSummary({ ...whole, toRedraw: 1 }, "redraw")).toBe("1 to redraw");
    const [remark] = leveled("shows");
    if (remark === undefined) throw new Error("a slip draws a remark");
    const { check, measured } = remark;
    const scope = { kind: "walk" } as const;
    const entry = { id: "aaaaaaaa", check, scope, reason: "", by: "", measured };
    const kept = [{ remark, entry }];
    expect(marginSummary({ remarks: [], kept, toRedraw: 0 }, "sound")).toBe(
      "nothing stands out · 1 on purpose",
    );
    expect(marginSummary({ ...found, kept }, "remarks")).toBe(
      "1 will show · 2 to redraw · 1 on purpose",
    );
  });

  it("does not call a walk sound while a question is open", () => {
    const whole = reviewWalk(walk(), "trade");
    expect(whole.remarks).toEqual([]);
    expect(marginMood("marked", whole, 0)).toBe("sound");
    const partly = reviewWalk(unmark(walk(), "left down", ["left-hip", "right-hip"]), "trade");
    expect(partly.remarks).toEqual([]);
    expect(marginMood("marked", partly, 0)).toBe("open");
  });

  it("calls nothing sound that was not read, nor unread for want of the line", () => {
    expect(marginMood("marked", "reading", 0)).toBe("reading");
    expect(marginMood("marked", "reading", 2)).toBe("reading");
    expect(marginMood("unmarked", "reading", 0)).toBe("unmarked");
    for (const sheet of ["empty", "unmarked", "marked"] as const) {
      expect(marginMood(sheet, "unread", 0)).toBe("unread");
    }
    const nothing = { remarks: [], kept: [], toRedraw: 0 };
    expect(marginSummary(nothing, "reading")).toBe("reading the sheet…");
    expect(marginSummary({ ...nothing, toRedraw: 2 }, "unread")).toBe("not read yet");
  });

  it("takes a sheet without marks for unmarked, whatever the checks would say", () => {
    expect(marginMood("unmarked", reviewWalk(unmarked(), "trade"), 0)).toBe("unmarked");
  });
});

describe("a panel's corner", () => {
  it("counts what is seen there, not everything that mentions the panel", () => {
    const review = slipping();
    expect(seenAt(review, "right passing").map(({ check }) => check)).toContain("slide");
    expect(seenAt(review, "right contact")).toEqual([]);
    expect(seenAt(review, "right down")).toEqual([]);
  });

  it("shows the gravest level there", () => {
    expect(gravestLevel(leveled("may-show", "shows"))).toBe("shows");
    expect(gravestLevel(leveled("tidy"))).toBe("tidy");
    expect(gravestLevel([])).toBeNull();
  });

  it("stays empty on a sound walk", () => {
    const review = reviewWalk(raise(walk(), "left up", 0.005), "trade");
    for (const { id } of walk().panels) expect(seenAt(review, id)).toEqual([]);
  });
});
