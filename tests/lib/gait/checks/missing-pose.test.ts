import { describe, expect, it } from "vitest";
import { COMMON_YARDSTICKS, type Finding, reviewWalk, type Walk } from "../../../../lib/gait";
import { defaultBrief, layOut, walkOf } from "../../../../lib/sheet";
import { type PanelName, walk, without } from "../../../support/walk";

const missing = (judged: Walk, yardstick: "trade" | "life" = "trade"): Finding[] =>
  reviewWalk(judged, yardstick).findings.filter(({ check }) => check === "missing-pose");
const kinds = (judged: Walk, yardstick: "trade" | "life" = "trade") =>
  missing(judged, yardstick).map(({ kind, side }) => `${side} ${kind}`);

describe.each(["left", "right"] as const)("a %s step", (side) => {
  it.each([
    ["contact", "shows"],
    ["passing", "shows"],
    ["down", "may-show"],
  ] as const)("that lacks its %s %s, by either yardstick", (pose, level) => {
    if (side === "left" && pose === "contact") return; // the loop's end has it: see below
    const gone = without(walk(), `${side} ${pose}`);
    for (const yardstick of COMMON_YARDSTICKS) {
      const [found, ...others] = missing(gone, yardstick).filter(({ kind }) => kind !== "sound");
      expect(others).toEqual([]);
      expect(found).toMatchObject({ kind: "remark", level, yardstick, side });
      expect(found?.kind === "remark" && found.title).toContain(`step has no ${pose}`);
    }
  });

  it("that lacks its up may hitch by trade, and is whole by life", () => {
    const flat = without(walk(), `${side} up`);
    const found = missing(flat).find(({ kind }) => kind === "remark");
    expect(found).toMatchObject({
      level: "may-show",
      side,
      measured: { value: 3, plusMinus: 0, unit: "poses" },
      expected: { value: 4, plusMinus: 0, unit: "poses" },
    });
    expect(found?.kind === "remark" && found.why).toContain(
      "has 3 of the 4 poses that the trade draws: without its up there is nothing for the hips to come down from: each step will hitch.",
    );
    expect(kinds(flat, "life")).toEqual(["left sound", "right sound"]);
  });
});

describe("missing poses", () => {
  it("are none on a whole walk, nor on an empty strip laid out whole", () => {
    expect(kinds(walk())).toEqual(["left sound", "right sound"]);
    let id = 0;
    const fresh = walkOf(layOut(defaultBrief, () => `p${id++}`));
    for (const yardstick of COMMON_YARDSTICKS) {
      expect(kinds(fresh, yardstick)).toEqual(["left sound", "right sound"]);
      expect(reviewWalk(fresh, yardstick).remarks).toEqual([]);
    }
  });

  it("are told at once for one step, from its first panel to the next contact", () => {
    const bare = without(without(walk(), "right down"), "right passing");
    const found = missing(bare).find(({ kind }) => kind === "remark");
    expect(found).toMatchObject({
      title: "Right step has no down and no passing",
      panels: ["right contact", "right up", "end"],
      frames: [25, 34, 37],
    });
  });

  it("name the gap where a whole contact is missing, between the two steps", () => {
    const found = missing(without(walk(), "right contact")).find(({ kind }) => kind === "remark");
    expect(found).toMatchObject({ title: "Right step has no contact" });
    expect(found?.panels.slice(0, 2)).toEqual(["left up", "right down"]);
  });

  it("are not said of a step that goes on, or that began before the strip", () => {
    const open = ["end", "right up", "right passing"].reduce<Walk>(
      (rest, name) => without(rest, name as PanelName),
      walk(),
    );
    expect(missing(open)[1]).toMatchObject({
      kind: "cannot-tell",
      needs: "the left foot's contact after frame 25",
    });
    const late = without(without(walk(), "left contact"), "end");
    expect(missing(late)[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "the contact that the left step begins with",
    });
  });

  it("leave a strip alone whose last contact closes the loop to its first panel", () => {
    expect(kinds(without(walk(), "left contact"))).toEqual(["right sound"]);
  });

  it("are not judged in a free walk, nor the up of a heavy one", () => {
    expect(missing(without(walk({ kind: "free" }), "left passing"))).toEqual([]);
    expect(kinds(without(walk({ kind: "heavy" }), "left up"))).toEqual([
      "left sound",
      "right sound",
    ]);
  });
});
