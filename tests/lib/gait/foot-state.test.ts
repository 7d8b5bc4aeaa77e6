import { describe, expect, it } from "vitest";
import { otherSide, type Side } from "../../../lib/body";
import { reviewWalk, type Walk, type Yardstick } from "../../../lib/gait";
import strides from "../../reference/captured-strides.json";
import { capturedWalk } from "../../support/captured";
import { type PanelName, unmark, walk, withPanel } from "../../support/walk";

const LEG = 420; // panel units, of the built walk

/** What a foot is told to do from a panel on. */
function told(from: Walk, panel: string, side: Side, yardstick: Yardstick = "trade") {
  const { footfalls } = reviewWalk(from, yardstick);
  const foot = footfalls.find((span) => span.panel === panel && span.side === side)?.foot;
  return foot?.kind === "value" ? `${foot.state} by ${foot.by}` : foot?.kind;
}

/** The left ball of a panel higher by so many leg lengths. */
function raiseBall(from: Walk, name: PanelName, by: number): Walk {
  const panel = from.panels.find(({ id }) => id === name);
  const ball = panel?.marks.side["left-ball"];
  if (panel === undefined || ball === undefined) throw new Error(`no left ball on ${name}`);
  const side = { ...panel.marks.side, "left-ball": { ...ball, y: ball.y - by * LEG } };
  return withPanel(from, name, { marks: { ...panel.marks, side } });
}

describe("a foot with its heel up", () => {
  it("is on its ball at a contact, where the rear ball and toe both lie on the ground", () => {
    expect(told(walk(), "right contact", "left")).toBe("ball by marks");
  });

  it("is on its toe where its ball stands over it by more than two marks' ±", () => {
    // Marks good to 0.5 % of a leg: 0.71 % between two, 1 % with the two of the stand.
    expect(told(raiseBall(walk(), "right contact", 0.0095), "right contact", "left")).toBe(
      "ball by marks",
    );
    expect(told(raiseBall(walk(), "right contact", 0.0105), "right contact", "left")).toBe(
      "toe by marks",
    );
  });

  it("is on its ball while its ball stands no higher than on the stand: the joint is no sole", () => {
    const thick = raiseBall(raiseBall(walk(), "stand", 0.02), "right contact", 0.02);
    expect(told(thick, "right contact", "left")).toBe("ball by marks");
    expect(told(raiseBall(thick, "right contact", 0.02), "right contact", "left")).toBe(
      "toe by marks",
    );
  });

  it("takes marks that are exact for no more than the finest that a hand places", () => {
    const exact = walk({ precision: 0 });
    expect(told(raiseBall(exact, "right contact", 0.006), "right contact", "left")).toBe(
      "ball by marks",
    );
    expect(told(raiseBall(exact, "right contact", 0.008), "right contact", "left")).toBe(
      "toe by marks",
    );
  });

  it("is on its ball where ball or toe is not marked, and where only the label tells", () => {
    const toeless = unmark(walk(), "right contact", ["left-toe"]);
    expect(told(toeless, "right contact", "left")).toBe("ball by marks");
    const bare = unmark(walk(), "right contact", ["left-toe", "left-ball", "left-heel"]);
    expect(told(bare, "right contact", "left")).toBe("ball by label");
  });

  it("brings no remark by the difference", () => {
    const remarked = (from: Walk) =>
      reviewWalk(from, "trade").remarks.map(({ check, panels }) => [check, ...panels].join(" "));
    expect(remarked(raiseBall(walk(), "right contact", 0.0105))).toEqual(
      remarked(raiseBall(walk(), "right contact", 0.0095)),
    );
  });
});

/** How the rear foot of each captured contact and down lies: its ball over its toe, as captured. */
const REAR_FEET = strides.walks.flatMap((captured) =>
  captured.steps.flatMap(({ leadFoot, poses }, nth) =>
    // A contact that its down comes with is the same foot.
    (["contact", "down"] as const)
      .filter((pose) => pose === "down" || poses.contact.frame < poses.down.frame)
      .map((pose) => {
        const rear = otherSide(leadFoot as Side);
        const points: Readonly<Record<string, readonly number[]>> = poses[pose].points;
        const height = (joint: string) => points[`${rear.charAt(0)}_${joint}`]?.[1] ?? Number.NaN;
        const over = (height("ball") - height("toe")) / captured.legLength;
        return { captured, panel: `${nth}.${pose === "contact" ? 0 : 1}`, rear, over };
      }),
  ),
);

describe("the rear feet of captured contacts and downs", () => {
  const WITHIN = Math.SQRT2 * 0.03; // of a leg: two points of a foot model, good to 3 % each

  it.each(REAR_FEET)("are told as they lie: $captured.clip $panel", (foot) => {
    const state = told(capturedWalk(foot.captured), foot.panel, foot.rear, "life");
    expect(state?.split(" ")[0]).toBe(foot.over > WITHIN ? "toe" : "ball");
  });

  it("are on the toe once: the downs of one walker have it 5.0 and 4.2 % up, the rest 2.6 % at most", () => {
    const highest = REAR_FEET.map(({ over }) => Math.round(over * 1000) / 10).toSorted(
      (a, b) => b - a,
    );
    expect(highest.slice(0, 3)).toEqual([5, 4.2, 2.6]);
    expect(REAR_FEET.filter(({ over }) => over > WITHIN)).toHaveLength(1);
  });
});
