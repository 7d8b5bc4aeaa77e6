import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applyFix, type Finding, fixFor, reviewWalk, type Walk } from "../../../../lib/gait";
import { CAPTURED_POSES, capturedClips } from "../../../support/captured-clips";
import { lift, unmark, walk } from "../../../support/walk";

const found = (judged: Walk, yardstick: "trade" | "life" = "trade"): readonly Finding[] =>
  reviewWalk(judged, yardstick).findings.filter(({ check }) => check === "tempo");
const remarks = (judged: Walk) =>
  found(judged).flatMap((one) => (one.kind === "remark" ? [one] : []));
const FOOT = ["ankle", "heel", "ball", "toe"] as const;

/** The built walk, its ground going by so many times as fast as it is drawn. */
const skating = (times: number, kind: Walk["kind"] = "plain"): Walk => {
  const built = walk({ kind });
  return { ...built, advance: times * built.advance };
};

describe("the advance", () => {
  it("is sound where the ground goes by as the steps are drawn", () => {
    expect(found(walk()).map(({ kind }) => kind)).toEqual(["sound", "sound", "sound"]);
  });

  it("shows where it does not: the feet skate, with both lengths", () => {
    expect(remarks(skating(1.2))).toMatchObject([
      {
        level: "shows",
        side: null,
        panels: ["left contact", "right contact"],
        title: "The feet skate",
        expected: { value: 0.05, unit: "share" },
        why: expect.stringContaining(
          "The ground goes by at 0.86 of a leg a step, and the steps are drawn 0.72 of a leg long: 20.0 ±",
        ),
      },
    ]);
    expect(remarks(skating(0.8))).toMatchObject([{ expected: { value: -0.05 } }]);
  });

  it("is passed over at half its threshold, and named at twice it", () => {
    for (const times of [0.975, 1.025]) expect(remarks(skating(times))).toEqual([]);
    for (const times of [0.9, 1.1]) expect(remarks(skating(times))).toHaveLength(1);
  });

  it("is set by its fix to what the steps say, and then no foot slips for it", () => {
    for (const times of [0.8, 1.3]) {
      const before = skating(times);
      const [remark] = remarks(before);
      const fix = remark === undefined ? null : fixFor(before, remark);
      expect(fix?.changes).toEqual([{ kind: "advance", advance: 0.06 }]);
      expect(fix?.title).toBe("Let the ground go by at 0.060 of a leg a frame");
      expect(reviewWalk(applyFix(before, fix ?? { changes: [] }), "trade").remarks).toEqual([]);
    }
  });

  it("is told by the places of a walk that travels, and its fix moves them", () => {
    const placed = (advance: number): Walk => {
      const panels = walk().panels.map((panel) => ({
        ...panel,
        place: (panel.frame - 1) * advance,
      }));
      return { ...walk(), travel: "travelling", advance: 1, panels };
    };
    expect(found(placed(0.06)).map(({ kind }) => kind)).toEqual(["sound", "sound", "sound"]);
    const before = placed(0.08);
    const [remark] = remarks(before);
    expect(remark?.title).toBe("The feet skate");
    const fix = remark === undefined ? null : fixFor(before, remark);
    expect(fix?.title).toBe("Move the panels closer together on the ground");
    expect(reviewWalk(applyFix(before, fix ?? { changes: [] }), "trade").remarks).toEqual([]);
  });

  it("cannot be told without the rear foot at a contact", () => {
    const open = unmark(walk(), "right contact", ["left-ball", "left-toe"]);
    expect(found(open).at(-1)).toMatchObject({ kind: "cannot-tell", side: null });
  });
});

describe("a step's own length and pace", () => {
  it("may show where it is longer or shorter than people's", () => {
    const long = { ...walk(), advance: 0.06 * 1.7 };
    expect(remarks(long).filter(({ side }) => side === "left")).toMatchObject([
      {
        level: "may-show",
        panels: ["left contact", "right contact"],
        title: "The left step is long",
        expected: { value: 1.05, unit: "leg" },
        why: expect.stringContaining("people walk with 55 to 105 %"),
      },
    ]);
    const short = { ...walk(), advance: 0.06 * 0.5 };
    expect(remarks(short).map(({ title }) => title)).toContain("The left step is short");
  });

  it("may show where it goes as fast as a run, if the character has a size", () => {
    const sized = (fps: number): Walk => ({
      ...walk(),
      framesPerSecond: fps,
      build: { headsTall: 7.5, legShare: 0.53, statureMetres: 1.7 },
    });
    // 0.72 of a 0.901 m leg in 12 frames: 1.297 m/s at 24 a second, v²/(gL) = 0.190; at 48, 0.762
    expect(remarks(sized(24))).toEqual([]);
    const [fast] = remarks(sized(48));
    expect(fast).toMatchObject({
      title: "The left step goes as fast as a run",
      expected: { value: 0.5 },
    });
    expect(fast?.measured.value).toBeCloseTo(0.7618, 3);
    expect(remarks({ ...sized(48), build: walk().build })).toEqual([]);
  });

  it("may show where no foot is on the ground after the passing", () => {
    const both = FOOT.flatMap((part) => [`left-${part}`, `right-${part}`] as const);
    expect(remarks(lift(walk(), "left up", both, 0.1))).toMatchObject([
      { level: "may-show", side: "left", panels: ["left up"], title: "No foot is on the ground" },
    ]);
    expect(remarks(lift(walk(), "left passing", both, 0.1))).toEqual([]); // there it floats
  });

  it.each(["sneak", "march", "free"] as const)(
    "is not judged in a %s walk, which says so once",
    (kind) => {
      expect(found(skating(1.5, kind))).toEqual([]);
      expect(reviewWalk(skating(1.5, kind), "trade").quieted.map(({ check }) => check)).toContain(
        "tempo",
      );
    },
  );

  it("cannot be told without feet", () => {
    const blind = unmark(
      unmark(walk(), "right contact", ["right-heel", "right-ankle"]),
      "right passing",
      ["right-heel", "right-ankle"],
    );
    expect(found(blind)[0]).toMatchObject({ kind: "cannot-tell", side: "left" });
  });
});

describe.skipIf(!existsSync(CAPTURED_POSES))("steps of every captured walk", () => {
  it("are as long as people's: none of the plain ones trips, and the jog reads as no walk", () => {
    for (const { clip, walk: captured, truth } of capturedClips()) {
      const tripped = found(captured, "life").filter(({ kind }) => kind === "remark");
      if (truth.plain) expect(tripped.map(() => clip)).toEqual([]);
      if (clip === "16_36") expect(tripped.length).toBeGreaterThan(0);
    }
  });
});
