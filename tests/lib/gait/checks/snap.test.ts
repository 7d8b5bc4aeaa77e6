import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { reviewWalk, type Walk } from "../../../../lib/gait";
import { CAPTURED_POSES, capturedClips } from "../../../support/captured-clips";
import { SNAP_FAULTS } from "../../../support/faults-of-snap";
import { type Drawn, unmark, walk } from "../../../support/walk";

const told = (judged: Walk) =>
  reviewWalk(judged, "life").findings.filter(({ check }) => check === "snap");
const remarks = (judged: Walk) => told(judged).filter((one) => one.kind === "remark");

/** The left leg straight at its passing, a frame before and after it bent by so many times what passes. */
const snapping = (times: number, drawn: Drawn = {}) =>
  SNAP_FAULTS[0]?.put(walk(drawn), "left", times) ?? walk();

describe("a knee between the poses", () => {
  it("is sound in a plain walk: one answer a step and side", () => {
    expect(told(walk()).map(({ kind, side }) => `${side} ${kind}`)).toEqual([
      "left sound",
      "left sound",
      "right sound",
      "right sound",
    ]);
  });

  it("snaps where it is thrown straight and back within two frames, and points at it", () => {
    expect(remarks(snapping(2))).toMatchObject([
      {
        level: "may-show",
        side: "left",
        panels: ["left before", "left after"],
        frames: [18, 20],
        spots: [
          { view: "side", joints: ["left-hip", "left-knee", "left-ankle"] },
          { panel: "left after", view: "side" },
        ],
        title: "Left knee snaps",
        why: expect.stringMatching(
          /^Between frames 18 and 20 .* straight at frame 19 and back, \d+ ± \d+° a frame; up to \d+°/,
        ),
      },
    ]);
  });

  it("snaps above 8° a frame and 2.5 times the median of its step, and not below", () => {
    const [over] = remarks(snapping(1.05, { precision: 0 }));
    expect(over?.expected.value).toBeGreaterThan((8 * Math.PI) / 180);
    expect((over?.measured.value ?? 0) / (over?.expected.value ?? 1)).toBeCloseTo(1.05, 2);
    expect(remarks(snapping(0.95, { precision: 0 }))).toEqual([]);
  });

  it("leaves open what the marks leave open", () => {
    expect(remarks(snapping(1.25, { precision: 0 }))).toHaveLength(1);
    expect(remarks(snapping(1.25, { precision: 0.02 }))).toEqual([]);
  });

  it("cannot be told without an ankle, and is not asked of a free walk", () => {
    const blind = unmark(walk(), "left passing", ["left-ankle"]);
    const [first] = told({ ...blind, panels: blind.panels.slice(1) });
    expect(first).toMatchObject({ kind: "cannot-tell", needs: expect.stringContaining("ankle") });
    expect(told({ ...snapping(2), kind: "free" })).toEqual([]);
  });
});

describe.skipIf(!existsSync(CAPTURED_POSES))("captured knees", () => {
  const plain = () => capturedClips().filter(({ clip }) => clip !== "16_36");

  it("snap in no step at their own frames", () => {
    const findings = plain().flatMap(({ walk: captured }) => told(captured));
    expect(findings.length).toBeGreaterThanOrEqual(56);
    expect(findings.filter(({ kind }) => kind !== "sound")).toEqual([]);
  });

  it("snap in at most one of 56 when they are timed anew on 24 frames a second", () => {
    const onFrames = plain().map(({ walk: captured }) => ({
      ...captured,
      framesPerSecond: 24,
      panels: captured.panels.map((one) => ({ ...one, frame: Math.round(one.frame / 5) })),
    }));
    const snaps = onFrames.flatMap(told).filter(({ kind }) => kind === "remark");
    expect(snaps.length).toBeLessThanOrEqual(1);
  });
});
