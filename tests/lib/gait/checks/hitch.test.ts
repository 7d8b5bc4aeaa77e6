import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { reviewWalk, type Walk } from "../../../../lib/gait";
import { CAPTURED_POSES, capturedClips } from "../../../support/captured-clips";
import { push, raise, unmark, walk, withPanel } from "../../../support/walk";

const told = (judged: Walk) =>
  reviewWalk(judged, "life").findings.filter(({ check }) => check === "hitch");
const HIPS = ["left-hip", "right-hip"] as const;

describe("the hips between the poses", () => {
  it("sink once a step in a plain walk", () => {
    expect(told(walk())).toMatchObject([
      { kind: "sound", measured: { value: 1, unit: "times" } },
      { kind: "sound", measured: { value: 1, unit: "times" } },
    ]);
  });

  it("sink twice where the up is low, and say at which frame", () => {
    expect(told(raise(walk(), "left up", -0.06))[0]).toMatchObject({
      kind: "remark",
      level: "may-show",
      side: "left",
      panels: ["left passing", "left up"],
      measured: { value: 2, unit: "times" },
      title: "Hips sink twice",
      why: expect.stringContaining("at frame 22"),
    });
  });

  it("are to sink twice in a double bounce, and are told where they do so but once", () => {
    const judged = raise(walk({ kind: "double-bounce" }), "left up", -0.06);
    expect(told(judged)).toMatchObject([
      { kind: "sound", side: "left", measured: { value: 2, unit: "times" } },
      {
        kind: "remark",
        side: "right",
        level: "may-show",
        panels: ["right down", "right up"],
        measured: { value: 1, unit: "times" },
        expected: { value: 2 },
        title: "Hips sink but once",
      },
    ]);
  });

  it("are not said to sink but once where coarse marks leave a second low open", () => {
    const coarse = raise(walk({ kind: "double-bounce", precision: 0.03 }), "left up", -0.02);
    expect(told(coarse)[0]?.kind).toBe("sound");
  });

  it("count no low that is less deep than heights are exact", () => {
    expect(told(raise(walk(), "left up", -0.012))[0]?.kind).toBe("sound");
  });

  it("do not go back: named where they do", () => {
    expect(told(push(walk(), "left passing", HIPS, -0.22))[0]).toMatchObject({
      title: "Hips go back",
      panels: ["left down", "left passing"],
    });
    expect(told(push(walk(), "left passing", HIPS, -0.17))[0]?.kind).toBe("sound");
  });

  it("are not asked of a free walk, and cannot be told without a hip", () => {
    expect(told(walk({ kind: "free" }))).toEqual([]);
    expect(told(unmark(walk(), "left down", HIPS))[0]).toMatchObject({ kind: "cannot-tell" });
  });
});

describe.skipIf(!existsSync(CAPTURED_POSES))("captured hips", () => {
  it("sink at most once a step and never go back, in every walk and the jog's steps aside", () => {
    const findings = capturedClips()
      .filter(({ clip }) => clip !== "16_36")
      .flatMap(({ walk: captured }) => told(captured));
    expect(findings.length).toBeGreaterThanOrEqual(28);
    expect(findings.filter(({ kind }) => kind !== "sound")).toEqual([]);
  });
});

describe("the arcs between the poses", () => {
  const swung = (by: number, precision?: number) =>
    told(
      push(walk(precision === undefined ? {} : { precision }), "left passing", ["left-wrist"], by),
    );

  it("are told where one breaks at a pose that is drawn far off it", () => {
    expect(swung(0.3)[0]).toMatchObject({
      kind: "remark",
      level: "may-show",
      panels: ["left down", "left passing"],
      spots: [{ joints: ["left-wrist"] }, { joints: ["left-wrist"] }],
      measured: { unit: "rad", value: expect.closeTo(Math.PI, 0) },
      title: "Left wrist's arc breaks",
      why: expect.stringContaining("At frame 19 the left wrist's arc turns by"),
    });
  });

  it.each([
    ["left down", 16],
    ["left passing", 19],
    ["left up", 22],
    ["right contact", 25],
  ] as const)("are not broken by a %s that only comes early or late", (pose, frame) => {
    const remarks = [-2, -1, 1, 2].flatMap((late) =>
      told(withPanel(walk(), pose, { frame: frame + late })).filter(
        ({ kind }) => kind === "remark",
      ),
    );
    expect(remarks).toEqual([]);
  });

  it("may turn as they like by less than marks are exact", () => {
    expect(swung(0.02)[0]?.kind).toBe("sound");
    expect(swung(0.12, 0.03)[0]?.kind).toBe("sound");
  });
});
