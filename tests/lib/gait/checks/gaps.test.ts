import { describe, expect, it } from "vitest";
import { type Finding, reviewWalk, type Walk, type Yardstick } from "../../../../lib/gait";
import { retime, walk, without } from "../../../support/walk";

const gaps = (judged: Walk, yardstick: Yardstick): Finding[] =>
  reviewWalk(judged, yardstick).findings.filter(({ check }) => check === "gaps");
const kinds = (judged: Walk, yardstick: Yardstick) =>
  gaps(judged, yardstick).map(({ kind, side }) => `${side} ${kind}`);
const ALL_SOUND = ["left sound", "right sound", "null sound"];

describe("gaps by trade", () => {
  it("are sound in the handbook's layout", () => {
    expect(kinds(walk(), "trade")).toEqual(ALL_SOUND);
  });

  it("let a pose stand one exposure away", () => {
    expect(kinds(retime(walk(), "left passing", 20), "trade")).toEqual(ALL_SOUND);
  });

  it("name a pose two frames away, with both gaps in words", () => {
    const [found] = gaps(retime(walk(), "left passing", 21), "trade");
    expect(found).toMatchObject({
      kind: "remark",
      level: "may-show",
      side: "left",
      panels: ["left down", "left passing", "left up"],
      measured: { value: 5, plusMinus: 0, unit: "frames" },
      expected: { value: 3 },
      title: "Left step is unevenly timed",
    });
    expect(found?.kind === "remark" && found.why).toContain(
      "Down to passing takes 5 frames where an even step has 3",
    );
  });

  it("allow two frames on twos, where a pose can only move by two", () => {
    const onTwos = walk({ exposure: 2, frames: { left: 16, right: 16 } });
    expect(kinds(onTwos, "trade")).toEqual(ALL_SOUND);
    expect(kinds(retime(onTwos, "left passing", 23), "trade")[0]).toBe("left sound");
    expect(kinds(retime(onTwos, "left passing", 25), "trade")[0]).toBe("left remark");
  });

  it("take either drawn frame when the even one lies between them", () => {
    const onTwos = walk({ exposure: 2 }); // a quarter of 12 frames is 3: one on twos lies at 2 and at 4
    const early = retime(retime(onTwos, "left down", 15), "left up", 21);
    const late = retime(retime(onTwos, "left down", 17), "left up", 23);
    expect([kinds(early, "trade")[0], kinds(late, "trade")[0]]).toEqual([
      "left sound",
      "left sound",
    ]);
  });

  it("cannot tell without the contact that ends the step", () => {
    expect(gaps(without(walk(), "end"), "trade")[1]).toMatchObject({
      kind: "cannot-tell",
      side: "right",
      needs: "the left foot's contact after frame 25",
    });
  });

  it("cannot tell without a pose between the contacts", () => {
    const bare = (["left down", "left passing", "left up"] as const).reduce(without, walk());
    expect(gaps(bare, "trade")[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "a pose between the contacts of the left step",
    });
  });

  it("cannot tell when the poses stand in another order", () => {
    expect(kinds(retime(walk(), "left up", 18), "trade")[0]).toBe("left cannot-tell");
  });
});

describe("gaps by life", () => {
  it.each([
    // frame of the passing in a step from 13 to 25, and what life says of it
    [17, "shows"], // 0.33
    [18, "may-show"], // 0.42
    [19, null], // 0.50
    [20, null], // 0.58
    [21, "may-show"], // 0.67
    [22, "shows"], // 0.75
  ] as const)("passing on frame %i of 13 to 25: %s", (frame, level) => {
    const judged = retime(without(walk(), "left up"), "left passing", frame);
    const [found] = gaps(judged, "life");
    expect(found?.kind === "remark" ? found.level : null).toBe(level);
    if (level !== null) expect(found).toMatchObject({ side: "left" });
  });

  it("says how late, and what will be seen", () => {
    const [found] = gaps(retime(without(walk(), "left up"), "left passing", 22), "life");
    expect(found).toMatchObject({
      title: "Left passing comes late",
      panels: ["left contact", "left passing", "right contact"],
      measured: { value: 0.75, unit: "share" },
    });
    expect(found?.kind === "remark" && found.why).toContain(
      "at 0.75 of the left step (frame 22 of 13 to 25)",
    );
  });

  it("does not ask for a moment that twos cannot draw", () => {
    const onTwos = walk({ exposure: 2 }); // 0.60 of 12 frames is 7.2: the drawn frame next to it is 8
    const late = retime(without(onTwos, "left up"), "left passing", 21);
    expect(kinds(late, "life")[0]).toBe("left sound");
  });

  it("cannot tell without the passing", () => {
    expect(gaps(without(walk(), "left passing"), "life")[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "the passing of the left step drawn",
    });
  });
});

describe.each(["trade", "life"] as const)("the two steps of a stride by %s", (yardstick) => {
  it.each([
    [8, 9, "sound"], // 11.8 %, but one frame is how whole frames come out
    [20, 22, "sound"], // 9.5 %
    [18, 20, "may-show"], // 10.5 %
    [12, 14, "shows"], // 15.4 %
    [16, 12, "shows"],
  ] as const)("left in %i frames, right in %i: %s", (left, right, said) => {
    const found = gaps(walk({ frames: { left, right } }), yardstick).at(-1);
    expect(found?.kind === "remark" ? found.level : found?.kind).toBe(said);
  });

  it("are told with both times", () => {
    const found = gaps(walk({ frames: { left: 12, right: 16 } }), yardstick).at(-1);
    expect(found).toMatchObject({ panels: ["left contact", "right contact", "end"], side: null });
    expect(found?.kind === "remark" && found.why).toContain(
      "The left step takes 12 frames and the right step 16 frames, 29 % apart",
    );
  });

  it("are not compared in a limp, which says so", () => {
    const limp = walk({ kind: "limp", frames: { left: 12, right: 16 } });
    expect(kinds(limp, yardstick)).toEqual(["left sound", "right sound"]);
    const { quieted } = reviewWalk(limp, yardstick);
    expect(quieted.filter(({ check }) => check === "gaps")).toHaveLength(1);
  });

  it("cannot be compared while one has no end", () => {
    expect(gaps(without(walk(), "end"), yardstick).at(-1)).toMatchObject({
      kind: "cannot-tell",
      needs: "both steps of the stride ended by a contact",
    });
  });
});

describe("gaps", () => {
  it("cannot tell on an empty strip", () => {
    expect(kinds({ ...walk(), panels: [] }, "trade")).toEqual(["null cannot-tell"]);
  });

  it("are not judged in a free walk", () => {
    expect(gaps(walk({ kind: "free" }), "trade")).toEqual([]);
  });
});
