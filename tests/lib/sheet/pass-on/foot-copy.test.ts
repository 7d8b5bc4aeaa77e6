import { describe, expect, it } from "vitest";
import type { JointName } from "../../../../lib/body";
import { footCopy } from "../../../../lib/sheet";
import { FEET, LEG, mark, panelAt, passed } from "../../../support/captured-panels";
import { expectLegsKept } from "../../../support/legs-kept";
import { strokeOf } from "../../../support/strokes";

describe("a foot passed on", () => {
  const from = panelAt("down", "left");
  const to = panelAt("passing", "left");
  const foot = FEET.filter((joint) => joint.startsWith("left-"));

  it("moves the foot and solves the knee, and nothing else", () => {
    const now = passed(to, footCopy(from, to, { side: "left", ink: false }));
    for (const joint of foot) {
      expect(now.side[joint]).toEqual(from.marks.side[joint]);
      expect(now.front[joint]).toEqual(from.marks.front[joint]);
    }
    expectLegsKept(to.marks.side, now.side);
    const others = Object.keys(to.marks.side).filter(
      (joint) => !foot.includes(joint as JointName) && joint !== "left-knee",
    ) as JointName[];
    for (const joint of others) {
      expect(now.side[joint]).toEqual(to.marks.side[joint]);
      expect(now.front[joint]).toEqual(to.marks.front[joint]);
    }
  });

  it("takes only the ink round the foot along, cut out of longer lines", () => {
    const ankle = mark(from.marks.side, "left-ankle");
    const legLine = strokeOf(
      [
        [ankle.x, ankle.y - 300, 1],
        [ankle.x, ankle.y, 1],
      ],
      { panel: from.id },
    );
    const headLine = strokeOf(
      [
        [300, 100, 1],
        [400, 100, 1],
      ],
      { panel: from.id },
    );
    const ink = {
      side: [
        { id: "legleg11", ...legLine },
        { id: "headhead", ...headLine },
      ],
      front: [],
    };
    const given = footCopy({ ...from, ink }, to, { side: "left", ink: true });
    if (given.kind !== "passing") throw new Error();
    expect(given.ink.length).toBe(1);
    const [piece] = given.ink;
    expect(piece?.panel).toBe(to.id);
    const heights = piece?.points.map(([, y]) => ankle.y - y) ?? [];
    expect(Math.max(...heights)).toBeLessThan(0.1 * LEG);
    expect(Math.min(...heights)).toBe(0);
  });

  it("answers what it needs", () => {
    const bare = { ...from, marks: { side: {}, front: {} } };
    expect(footCopy(bare, to, { side: "right", ink: true })).toEqual({
      kind: "cannot-tell",
      needs: "the right foot marked there",
    });
  });
});
