import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applyFix, fixFor, reviewWalk, type Walk } from "../../../../lib/gait";
import { CAPTURED_POSES, capturedClips } from "../../../support/captured-clips";
import { travelling } from "../../../support/seeding";
import { push, raise, unmark, walk, withPanel } from "../../../support/walk";

const told = (judged: Walk) =>
  reviewWalk(judged, "trade").findings.filter(({ check }) => check === "loop");
/** The left wrist of the last pose so far ahead of where it was. */
const open = (legs: number) => push(walk(), "end", ["left-wrist"], legs);

describe("a loop", () => {
  it("is sound where the last pose is the first again", () => {
    expect(told(walk())).toMatchObject([{ kind: "sound" }]);
    const [found] = told(walk());
    expect(found?.kind === "sound" && found.measured?.value).toBeCloseTo(0, 9);
  });

  it.each([
    [0.07, "tidy"],
    [0.095, "may-show"],
    [0.2, "shows"],
  ])("is open by %f of a leg: %s", (legs, level) => {
    expect(told(open(legs))).toMatchObject([
      {
        kind: "remark",
        level,
        panels: ["left contact", "end"],
        spots: [{ joints: ["left-wrist"] }, { panel: "end", joints: ["left-wrist"] }],
      },
    ]);
    expect(told(travelling(open(legs)))).toMatchObject([{ level }]);
  });

  it.each([0.02, 0.045])("passes at %f", (legs) => {
    expect(told(open(legs))).toMatchObject([{ kind: "sound" }]);
  });

  it("is not asked of a walk that ends on the other foot, or does not end with a contact", () => {
    const ended = withPanel(walk(), "end", { pose: "down" });
    expect(told(ended)).toEqual([]);
    const short = { ...walk(), panels: walk().panels.slice(0, 6) };
    expect(told(short)).toEqual([]);
  });

  it("lays the hips upon each other, so hips that stand higher move everything else", () => {
    const [found] = told(raise(walk(), "end", 0.12));
    expect(found).toMatchObject({ kind: "remark", level: "shows" });
  });

  it("cannot be told without hips", () => {
    expect(told(unmark(walk(), "end", ["left-hip", "right-hip"]))).toMatchObject([
      { kind: "cannot-tell", needs: expect.stringContaining("hips") },
    ]);
  });

  it.each([
    ["on the spot", open(0.2)],
    ["travelling", travelling(open(0.2))],
  ])("is closed by its fix: %s", (_, judged) => {
    const [found] = told(judged);
    if (found?.kind !== "remark") throw new Error("no remark");
    const fix = fixFor(judged, found);
    expect(fix?.title).toBe("Copy the first pose onto the last");
    expect(fix === null ? [] : told(applyFix(judged, fix))).toMatchObject([{ kind: "sound" }]);
  });
});

describe.skipIf(!existsSync(CAPTURED_POSES))("captured strides", () => {
  it("close within what was published: none shows, at the published worst of 13.8 % in one of 317", () => {
    const gaps = capturedClips()
      .filter(({ truth }) => truth.plain)
      .flatMap(({ walk: captured }) => {
        const [first] = captured.panels;
        const ends = captured.panels.filter(
          ({ pose, weightOn }) => pose === "contact" && weightOn === first?.weightOn,
        );
        return ends.slice(1).map((end) => ({
          ...captured,
          panels: captured.panels.slice(0, 1 + captured.panels.indexOf(end)).slice(-9),
        }));
      })
      .flatMap((stride) => told(stride));
    expect(gaps.length).toBeGreaterThan(6);
    expect(gaps.filter((one) => one.kind === "remark" && one.level !== "tidy")).toEqual([]);
  });
});
