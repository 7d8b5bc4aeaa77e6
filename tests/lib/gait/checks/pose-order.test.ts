import { describe, expect, it } from "vitest";
import type { JointName, Side } from "../../../../lib/body";
import { type Finding, reviewWalk, type Walk } from "../../../../lib/gait";
import { lift, push, retime, unmark, walk, withPanel } from "../../../support/walk";

const order = (judged: Walk, yardstick: "trade" | "life" = "trade"): Finding[] =>
  reviewWalk(judged, yardstick).findings.filter(({ check }) => check === "pose-order");
const remarks = (judged: Walk, yardstick: "trade" | "life" = "trade") =>
  order(judged, yardstick).filter((found) => found.kind === "remark");
const foot = (side: Side) =>
  (["ankle", "heel", "ball", "toe"] as const).map((part): JointName => `${side}-${part}`);

describe("the order of poses", () => {
  it("is sound where labels run contact, down, passing, up", () => {
    expect(order(walk()).map(({ kind, side }) => `${side} ${kind}`)).toEqual([
      "left sound",
      "right sound",
    ]);
  });

  it("names two poses whose labels are swapped", () => {
    const swapped = withPanel(withPanel(walk(), "left down", { pose: "passing" }), "left passing", {
      pose: "down",
    });
    const [found] = remarks(swapped);
    expect(found).toMatchObject({
      level: "may-show",
      side: "left",
      panels: ["left down", "left passing"],
      title: "Left step has its poses out of order",
      measured: { value: 2, unit: "poses" },
      expected: { value: 0, unit: "poses" },
    });
    expect(found?.why).toContain("runs contact (13), passing (16), down (19) and up (22)");
    expect(remarks(swapped, "life")).not.toEqual([]);
  });

  it("lets the up stand before the passing in life, and not in the trade", () => {
    const early = retime(walk(), "left up", 18);
    expect(remarks(early, "trade")).toHaveLength(1);
    expect(remarks(early, "life")).toEqual([]);
  });

  it("names a panel that carries on the other foot than its step", () => {
    const [found] = remarks(withPanel(walk(), "right passing", { weightOn: "left" }));
    expect(found).toMatchObject({ side: "right", panels: ["right passing"] });
    expect(found?.why).toContain("Frame 31 carries on the other foot than the right step");
  });

  it("calls a down that stands before its contact out of order, and not missing", () => {
    const swapped = withPanel(withPanel(walk(), "right contact", { pose: "down" }), "right down", {
      pose: "contact",
    });
    const checks = reviewWalk(swapped, "trade").remarks.map(({ check }) => check);
    expect(checks).toContain("pose-order");
    expect(checks).not.toContain("missing-pose");
  });

  it("names the same foot landing twice in a row", () => {
    const hop = ["contact", "down", "passing", "up"].reduce<Walk>(
      (rest, pose) => withPanel(rest, `right ${pose}` as "right up", { weightOn: "left" }),
      walk(),
    );
    const twice = remarks(hop).filter(({ title }) => title.includes("lands twice"));
    expect(twice[0]).toMatchObject({ side: "left", panels: ["left contact", "right contact"] });
  });

  it("reads the drawing: a contact with its feet crossing and one in the air is a passing", () => {
    const crossed = lift(
      push(walk(), "left contact", foot("right"), 0.675),
      "left contact",
      foot("right"),
      0.1,
    );
    const [found] = remarks(crossed);
    expect(found).toMatchObject({
      title: "Left contact reads as a passing",
      panels: ["left contact"],
      expected: { value: 0.05, unit: "leg" },
    });
    expect(found?.why).toContain("its ankles are 1.0 ± 0.7 % of a leg apart");
  });

  it("takes feet that cross on the ground for no passing", () => {
    expect(remarks(push(walk(), "left contact", foot("right"), 0.71))).toEqual([]);
  });

  it("cannot tell without both feet, and says where", () => {
    const open = unmark(walk(), "left down", ["left-ankle", "left-heel"]);
    expect(order(open)[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "both feet marked, heel and toe, at the down of the left step",
    });
  });

  it("is not judged in a free walk", () => {
    expect(order(withPanel(walk({ kind: "free" }), "left down", { pose: "up" }))).toEqual([]);
  });
});
