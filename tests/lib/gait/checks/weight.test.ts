import { describe, expect, it } from "vitest";
import { type CheckId, type Finding, reviewWalk, type Walk } from "../../../../lib/gait";
import { push, shift, unmark, walk, without } from "../../../support/walk";

const HIPS = ["left-hip", "right-hip"] as const;
const BODY = [
  "head",
  "neck",
  ...(["shoulder", "elbow", "wrist", "hip", "knee"] as const).flatMap((part) =>
    (["left", "right"] as const).map((side) => `${side}-${part}` as const),
  ),
] as const;
const found = (judged: Walk, check: CheckId): Finding[] =>
  reviewWalk(judged, "trade").findings.filter((one) => one.check === check);
const remark = (judged: Walk, check: CheckId) =>
  found(judged, check).find((one) => one.kind === "remark");

describe("weight from the side", () => {
  it("is sound at the stand, at both contacts and at both passings", () => {
    expect(found(walk(), "weight-side").map(({ kind, side }) => `${side} ${kind}`)).toEqual([
      "null sound",
      ...["left sound", "left sound", "right sound", "right sound"],
    ]);
  });

  it("names hips behind the standing foot, with both numbers", () => {
    const behind = remark(push(walk(), "left passing", HIPS, -0.12), "weight-side");
    expect(behind).toMatchObject({
      level: "shows",
      side: "left",
      panels: ["left passing"],
      title: "Weight is behind the left foot",
      spots: [{ panel: "left passing", view: "side", joints: [...HIPS, "left-ankle"] }],
      expected: { value: 0.03, unit: "leg" },
    });
    expect(behind?.kind === "remark" && behind.why).toContain(
      "At the left passing, frame 19, the hips are 3.0 ± 0.6 % of a leg behind the left ankle; people have them 3 to 15 % ahead of it.",
    );
  });

  it("names hips past the front foot at contact", () => {
    expect(remark(push(walk(), "right contact", HIPS, 0.35), "weight-side")).toMatchObject({
      side: "right",
      panels: ["right contact"],
      title: "Weight is ahead of the feet",
    });
  });

  it("names a stand whose centre of mass is outside its feet", () => {
    const leaning = push(walk(), "stand", BODY, 0.3);
    expect(remark(leaning, "weight-side")).toMatchObject({
      side: null,
      panels: ["stand"],
      title: "Weight is ahead of the feet",
    });
  });

  it("goes by one hip with the ± of the other, and by the heel and toe without an ankle", () => {
    const oneHip = unmark(walk(), "left passing", ["left-hip"]);
    const sound = found(oneHip, "weight-side").find(({ panels }) => panels[0] === "left passing");
    expect(sound?.kind === "sound" && sound.measured?.plusMinus).toBeGreaterThan(0.0105);
    const footless = unmark(push(walk(), "left passing", HIPS, -0.2), "left passing", [
      "left-ankle",
    ]);
    expect(remark(without(footless, "stand"), "weight-side")).toMatchObject({
      expected: { value: 0 },
    });
  });

  it("cannot tell without hips, nor of a stand without its trunk", () => {
    expect(found(unmark(walk(), "left passing", HIPS), "weight-side")[2]).toMatchObject({
      kind: "cannot-tell",
      needs:
        "the hips and the left ankle, or heel and toe, marked in the side view at the passing of the left step",
    });
    const trunkless = unmark(walk(), "stand", ["left-shoulder", "right-shoulder", "neck"]);
    expect(found(trunkless, "weight-side")[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "the head, neck or shoulders, legs and feet marked on the stand",
    });
  });

  it("is not judged under a load", () => {
    const heavy = push(walk({ kind: "heavy" }), "left passing", HIPS, -0.2);
    expect(found(heavy, "weight-side")).toEqual([]);
    expect(reviewWalk(heavy, "trade").quieted.map(({ check }) => check)).toContain("weight-side");
  });
});

describe("weight from the front", () => {
  it("is sound while the hips go to the foot that carries", () => {
    expect(found(walk(), "weight-front").map(({ kind }) => kind)).toEqual(["sound", "sound"]);
  });

  it("names hips shifted away from the standing foot, the gravest of what is wrong", () => {
    const away = found(shift(walk(), "right passing", HIPS, -0.08), "weight-front");
    expect(away.map(({ kind }) => kind)).toEqual(["sound", "remark"]);
    expect(away[1]).toMatchObject({
      level: "shows",
      side: "right",
      title: "Weight is not over the right foot",
      spots: [{ panel: "right passing", view: "front", joints: [...HIPS] }],
      expected: { value: 0.02 },
    });
    expect(away[1]?.kind === "remark" && away[1].why).toContain(
      "the hips are shifted 5.5 ± 0.5 % of a leg away from the right foot, from the middle between both; up to 2.0 % passes.",
    );
  });

  it("cannot tell from the side view alone", () => {
    const open = unmark(walk(), "left passing", HIPS, ["front"]);
    expect(found(open, "weight-front")[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "the hips and feet marked in the front view at contact and passing",
    });
  });

  it("is not judged in a free walk", () => {
    expect(found(walk({ kind: "free" }), "weight-front")).toEqual([]);
  });
});
