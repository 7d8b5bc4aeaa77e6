import { describe, expect, it } from "vitest";
import { panelTold, viewTold } from "../../../app/_strip/panel-told";
import { reviewWalk } from "../../../lib/gait";
import { brindleExample, defaultBrief, layOut, walkOf } from "../../../lib/sheet";
import { ids } from "../../support/peers";

const brindle = brindleExample(ids());
const review = reviewWalk(walkOf(brindle), "trade");

const told = (frame: number): string => {
  const panel = brindle.panels.find((candidate) => candidate.frame === frame);
  return panel === undefined ? "" : panelTold(panel, review);
};

describe("a panel told to whoever does not see it", () => {
  it("has its frame, pose, weight, hips and remarks in one sentence", () => {
    const sentences = brindle.panels.map(({ frame }) => told(frame));
    const whole = /^frame \d+, down, weight on right, hips 0\.\d\d of a leg, \d remarks?$/;
    expect(sentences.filter((sentence) => whole.test(sentence))).toHaveLength(1);
  });

  it("counts as many remarks as the corner of the panel does", () => {
    for (const panel of brindle.panels) {
      const seen = review.remarks.filter(
        ({ level, panels }) => level !== "tidy" && panels.at(-1) === panel.id,
      );
      const said = / (\d+) remarks?$/.exec(panelTold(panel, review))?.[1];
      expect(Number(said ?? 0)).toBe(seen.length);
    }
  });

  it("says what is kept on purpose, and what is to redraw", () => {
    const [remark] = review.remarks;
    const panel = brindle.panels.find(({ id }) => id === remark?.panels.at(-1));
    if (remark === undefined || panel === undefined) throw new Error("Brindle has remarks");
    const { check, measured } = remark;
    const scope = { kind: "walk" } as const;
    const entry = { id: "entryAAA", check, scope, reason: "", measured, by: "Ana" };
    const kept = reviewWalk(walkOf(brindle), "trade", [entry]);
    expect(panelTold(panel, kept)).toMatch(/, 1 kept on purpose$/);
    const redrawn = { ...panel, toRedraw: { side: false, front: true } };
    expect(panelTold(redrawn, kept)).toMatch(/, 1 kept on purpose, to redraw$/);
    expect(viewTold(redrawn, "front")).toMatch(/ marked, to redraw$/);
    expect(viewTold(redrawn, "side")).not.toContain("redraw");
  });

  it("says nothing of what is not marked", () => {
    const blank = layOut(defaultBrief, ids());
    const sentences = blank.panels.map((panel) =>
      panelTold(panel, reviewWalk(walkOf(blank), "trade")),
    );
    expect(sentences[1]).toBe("frame 4, down, weight on left");
  });

  it("says what lies on a view", () => {
    const [empty] = layOut(defaultBrief, ids()).panels;
    const [drawn] = brindle.panels;
    if (empty === undefined || drawn === undefined) throw new Error("both have panels");
    expect(viewTold(empty, "side")).toBe("no ink, no joints marked");
    expect(viewTold(drawn, "side")).toMatch(/^\d+ strokes, \d+ joints marked$/);
  });
});
