import { describe, expect, it } from "vitest";
import { type Finding, reviewWalk, type Walk, type Yardstick } from "../../../../lib/gait";
import strides from "../../../reference/captured-strides.json";
import leans from "../../../reference/shoulder-leans.json";
import { capturedWalk } from "../../../support/captured";
import { lift, type PanelName, placedTo, unmark, walk } from "../../../support/walk";

const DEGREE = Math.PI / 180;
const SPAN = 79.8 / 420; // leg lengths between the built walk's shoulders, seen from the front
const exact = (kind: Walk["kind"] = "plain") => walk({ precision: 0, kind });

const found = (judged: Walk, yardstick: Yardstick = "trade"): readonly Finding[] =>
  reviewWalk(judged, yardstick).findings.filter(({ check }) => check === "symmetry");
const remark = (judged: Walk) => {
  const [one] = found(judged);
  return one?.kind === "remark" ? one : null;
};

/** A shoulder of one pose lowered until the line through both tilts by so many degrees. */
const tilted = (from: Walk, name: PanelName, side: "left" | "right", degrees: number): Walk =>
  lift(from, name, [`${side}-shoulder`], -SPAN * Math.tan(degrees * DEGREE));
const bothDowns = (left: number, right: number): Walk =>
  tilted(tilted(exact(), "left down", "left", left), "right down", "left", right);

describe("the swing of the shoulders", () => {
  it.each(["trade", "life"] as const)("is alike in a built walk, by %s", (yardstick) => {
    expect(found(walk(), yardstick).map(({ kind }) => kind)).toEqual(["sound"]);
  });

  it("cancels out where the two steps mirror each other, however far it goes", () => {
    const swing = tilted(tilted(exact(), "left down", "left", 20), "right down", "right", 20);
    expect(found(swing).map(({ kind }) => kind)).toEqual(["sound"]);
  });

  it("leans where one shoulder stays low, and names the side, the panels and the lean", () => {
    expect(remark(bothDowns(14, 10))).toMatchObject({
      level: "may-show",
      side: "left",
      panels: ["left down", "right down"],
      frames: [16, 28],
      title: "Left shoulder stays low",
      measured: { unit: "rad", plusMinus: 0 },
    });
    expect(remark(bothDowns(14, 10))?.measured.value).toBeCloseTo(12 * DEGREE, 6);
    expect(remark(bothDowns(14, 10))?.why).toContain(
      "tilt 14° down to the left at frame 16 and 10° down to the left at frame 28",
    );
  });

  it("says when it is one step alone", () => {
    const once = tilted(exact(), "right passing", "right", 18);
    expect(remark(once)).toMatchObject({
      side: "right",
      title: "Right shoulder drops on one step only",
      panels: ["left passing", "right passing"],
    });
  });

  it("passes up to the most that captured walks lean, folds away up to twice that", () => {
    const level = (lean: number) => remark(bothDowns(lean, lean))?.level ?? null;
    const { most } = leans.all;
    expect(level(most - 0.1)).toBeNull();
    expect(level(most + 0.1)).toBe("tidy");
    expect(level(2 * most - 0.1)).toBe("tidy");
    expect(level(2 * most + 0.2)).toBe("may-show");
  });

  it("does not speak of a lean that lies within the marks' precision", () => {
    const vague = (precision: number) => {
      const judged = walk({ precision });
      return found(tilted(tilted(judged, "left down", "left", 5), "right down", "left", 5)).map(
        ({ kind }) => kind,
      );
    };
    expect(vague(0)).toEqual(["remark"]);
    expect(vague(0.01)).toEqual(["sound"]);
  });

  it("speaks of the pose that surely leans, not of one that was marked too vaguely to say", () => {
    const leans = tilted(tilted(bothDowns(14, 14), "left up", "left", 20), "right up", "left", 20);
    const vague = placedTo(leans, "right up", ["left-shoulder", "right-shoulder"], 0.2);
    expect(remark(vague)).toMatchObject({ panels: ["left down", "right down"] });
  });

  it("needs the shoulders from the front, in the same pose of both steps", () => {
    const one = unmark(bothDowns(14, 10), "left up", ["left-shoulder"]);
    expect(found(one).map(({ kind }) => kind)).toEqual(["remark", "cannot-tell"]);
    expect(found(one)[1]).toMatchObject({ panels: ["left up", "right up"] });
    const blind = exact().panels.reduce(
      (judged, { id }) => unmark(judged, id as PanelName, ["right-shoulder"]),
      exact(),
    );
    expect(found(blind)).toMatchObject([
      { kind: "cannot-tell", needs: expect.stringContaining("both shoulders marked") },
    ]);
    const { panels } = exact();
    const short = { ...exact(), panels: panels.filter(({ frame }) => frame <= 25) };
    expect(found(short)).toMatchObject([
      { kind: "cannot-tell", needs: "the same pose of two steps" },
    ]);
  });

  it("never takes what is no number for sound", () => {
    const judged = bothDowns(0, 0);
    const panels = judged.panels.map((panel) => {
      const front = Object.fromEntries(
        Object.entries(panel.marks.front).map(([joint, mark]) => [
          joint,
          { ...mark, y: Number.NaN },
        ]),
      );
      return { ...panel, marks: { ...panel.marks, front } };
    });
    expect(found({ ...judged, panels }).map(({ kind }) => kind)).toEqual(["cannot-tell"]);
  });

  it.each(["limp", "free"] as const)("is not asked of a %s, which says so once", (kind) => {
    const judged = { ...bothDowns(14, 10), kind };
    expect(found(judged)).toEqual([]);
    const { quieted } = reviewWalk(judged, "trade");
    expect(quieted.filter(({ check }) => check === "symmetry")).toHaveLength(1);
  });
});

describe("captured walks", () => {
  it.each(leans.walks)("$clip lean as far as was worked out elsewhere", ({ clip, firstStride }) => {
    const captured = strides.walks.find((one) => one.clip === clip);
    if (captured === undefined) return; // not every clip's stride is kept here
    const farthest = Math.max(...Object.values(firstStride).map(Math.abs));
    const [answer] = found(capturedWalk(captured), "life");
    expect(answer?.kind).toBe("sound");
    const measured = answer?.kind === "sound" ? answer.measured : null;
    expect(Math.abs(measured?.value ?? Number.NaN) / DEGREE).toBeCloseTo(farthest, 1);
  });
});
