import { describe, expect, it } from "vitest";
import { type Finding, reviewWalk, type Walk } from "../../../../lib/gait";
import { push, retime, unmark, walk, without, withPanel } from "../../../support/walk";

const slide = (judged: Walk, yardstick: "trade" | "life" = "trade"): Finding[] =>
  reviewWalk(judged, yardstick).findings.filter(({ check }) => check === "slide");
const kinds = (judged: Walk) => slide(judged).map(({ kind, side }) => `${side} ${kind}`);
const ALL_SOUND = ["left sound", "left sound", "right sound", "right sound"];

describe.each(["trade", "life"] as const)("slide by %s", (yardstick) => {
  it("names the foot whose ball slips, from where to where", () => {
    const [found] = slide(push(walk(), "left passing", ["left-ball"], 0.08), yardstick);
    expect(found).toMatchObject({
      kind: "remark",
      level: "shows",
      yardstick,
      side: "left",
      panels: ["left down", "left passing"],
      frames: [16, 19],
      spots: [
        { panel: "left down", view: "side", joints: ["left-ball"] },
        { panel: "left passing", view: "side", joints: ["left-ball"] },
      ],
      expected: { value: 0.05, plusMinus: 0, unit: "leg" },
      title: "Left foot slips",
    });
    expect(found?.kind === "remark" && found.why).toContain(
      "its ball moves 8.0 ± 0.7 % of a leg forward",
    );
  });

  it("says that a smaller slip may show", () => {
    const [found] = slide(
      push(walk({ precision: 0 }), "left passing", ["left-ball"], 0.045),
      yardstick,
    );
    expect(found).toMatchObject({ kind: "remark", level: "may-show", expected: { value: 0.04 } });
  });
});

describe("slide", () => {
  it("is sound while both marks of both feet stay", () => {
    expect(kinds(walk())).toEqual(ALL_SOUND);
  });

  it("follows the heel from the contact", () => {
    const found = slide(push(walk(), "right passing", ["right-heel"], 0.08));
    expect(found.find(({ kind }) => kind === "remark")).toMatchObject({
      side: "right",
      panels: ["right contact", "right passing"],
    });
  });

  it("takes it ill sooner when the foot slides back", () => {
    const [found] = slide(push(walk(), "left passing", ["left-heel"], -0.03));
    expect(found).toMatchObject({ title: "Left foot slides back", expected: { value: -0.02 } });
  });

  it("lets the ball come forward while the foot rolls over its heel", () => {
    expect(kinds(push(walk(), "left contact", ["left-ball", "left-toe"], -0.1))).toEqual(ALL_SOUND);
  });

  it("tells one slip once, by the mark that slips farther", () => {
    const whole = push(walk(), "left passing", ["left-ball", "left-heel"], 0.08);
    expect(slide(whole).filter(({ kind }) => kind === "remark")).toHaveLength(1);
  });

  it("finds the slip at a breakdown within the stance", () => {
    const slipped = push(walk(), "left down", ["left-heel"], 0.09);
    expect(slide(slipped)[0]).toMatchObject({ panels: ["left contact", "left down"] });
  });

  it("sees a foot carried along when a pose is moved in time and its place is not", () => {
    const late = withPanel(walk(), "left passing", { frame: 20 });
    expect(slide(late)[0]).toMatchObject({ kind: "remark", side: "left" });
    expect(kinds(retime(walk(), "left passing", 20))).toEqual(ALL_SOUND);
  });

  it("passes over a pose in between that carries the other side's weight", () => {
    const slipped = push(walk(), "left down", ["left-heel"], 0.09);
    const others = withPanel(slipped, "left down", { pose: "breakdown", weightOn: "right" });
    expect(slide(others).filter(({ kind }) => kind === "remark")).toEqual([]);
  });

  it("fires only beyond the marks' own uncertainty", () => {
    const soles = push(walk({ precision: 0.03 }), "left passing", ["left-ball"], 0.08); // ± 4.2 %
    expect(slide(soles).some(({ kind }) => kind === "remark")).toBe(false);
  });

  it("lets the ball follow from the stand's foot, known only to 3 %", () => {
    const quick = unmark(walk(), "left passing", ["left-ball"]);
    const [ball] = slide(quick);
    expect(ball).toMatchObject({ kind: "sound", side: "left" });
    const plusMinus = ball?.kind === "sound" ? ball.measured?.plusMinus : Number.NaN;
    expect(plusMinus).toBeCloseTo(Math.hypot(0.03, 0.005, 0.005), 9);
  });

  it("cannot tell without ball and toe, and still follows the heel", () => {
    const found = slide(unmark(walk(), "left passing", ["left-ball", "left-toe"]));
    expect(found[0]).toMatchObject({
      kind: "cannot-tell",
      side: "left",
      needs: "the left ball marked at its down and passing",
    });
    expect(found[1]).toMatchObject({ kind: "sound", side: "left" });
  });

  it("cannot tell without the passing", () => {
    expect(kinds(without(walk(), "left passing")).slice(0, 2)).toEqual([
      "left cannot-tell",
      "left cannot-tell",
    ]);
  });

  it("cannot tell where the ground is without an advance", () => {
    expect(slide({ ...walk(), advance: Number.NaN })[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "the advance, or a place for each panel",
    });
  });

  it("cannot tell while nobody said whose weight it is", () => {
    const panels = walk().panels.map((panel) => ({ ...panel, weightOn: null }));
    expect(slide({ ...walk(), panels })[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "to know whose weight the step carries",
    });
  });

  it("cannot tell on an empty strip", () => {
    expect(kinds({ ...walk(), panels: [] })).toEqual(["null cannot-tell"]);
  });

  it("is judged in a free walk too", () => {
    const free = push(walk({ kind: "free" }), "left passing", ["left-ball"], 0.08);
    expect(slide(free)[0]?.kind).toBe("remark");
  });
});
