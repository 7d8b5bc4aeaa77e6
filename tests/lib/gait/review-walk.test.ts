import { describe, expect, it } from "vitest";
import { reviewWalk, type WalkPanel } from "../../../lib/gait";
import lifeCurve from "../../reference/hip-curve-of-life.json";
import { push, raise, retime, shift, unmark, walk, without } from "../../support/walk";

describe("a review", () => {
  const faulty = retime(
    push(raise(walk(), "right down", 0.06), "left passing", ["left-ball"], 0.08),
    "left passing",
    21,
  );

  it("puts the gravest remark first", () => {
    const { remarks } = reviewWalk(faulty, "trade");
    expect(remarks.map(({ check, level }) => `${check} ${level}`)).toEqual([
      "hip-order shows",
      "slide shows",
      "gaps may-show",
      "hitch may-show", // a down so high is followed by a passing that stands lower: a second low
      "limb-length may-show", // hips raised over knees that stay: both thighs are longer there
      "limb-length may-show",
      "symmetry may-show",
    ]);
  });

  it("hands out remarks by panel", () => {
    const { remarksByPanel } = reviewWalk(faulty, "trade");
    const checks = (panel: string) => remarksByPanel.get(panel)?.map(({ check }) => check);
    expect(checks("left passing")).toEqual(["slide", "gaps"]);
    expect(checks("right contact")).toEqual(["hip-order"]);
    expect(checks("stand")).toEqual([]);
  });

  it("says where the leg length was measured", () => {
    expect(reviewWalk(walk(), "trade").legLength).toMatchObject({ from: "stand" });
    expect(reviewWalk(without(walk(), "stand"), "trade").legLength).toMatchObject({
      from: "panels",
    });
  });

  it("reads only the panel again whose mark moved", () => {
    const before = walk();
    const first = reviewWalk(before, "trade").readingsByPanel;
    const second = reviewWalk(raise(before, "left up", 0.01), "trade").readingsByPanel;
    const changed = [...first.keys()].filter((id) => first.get(id) !== second.get(id));
    expect(changed).toEqual(["left up"]);
  });

  it("reads every panel again when the leg on the stand changed", () => {
    const before = walk();
    const first = reviewWalk(before, "trade").readingsByPanel;
    const second = reviewWalk(raise(before, "stand", 0.1), "trade").readingsByPanel;
    const kept = [...first.keys()].filter((id) => first.get(id) === second.get(id));
    expect(kept).toEqual([]);
  });

  it("reads a panel again when the other panels lend it another leg", () => {
    const bare = without(walk({ precision: 0 }), "stand");
    const alone = { ...bare, panels: bare.panels.filter(({ id }) => id === "left up") };
    const heightIn = (judged: typeof bare) => {
      const { legLength, readingsByPanel } = reviewWalk(judged, "trade");
      const answer = readingsByPanel.get("left up")?.find(({ id }) => id === "hip-height")?.answer;
      const leg = legLength.kind === "value" ? legLength.value : Number.NaN;
      return { leg, units: answer?.kind === "value" ? answer.value * leg : Number.NaN };
    };
    const among = heightIn(bare);
    const single = heightIn(alone);
    expect(single.leg).not.toBeCloseTo(among.leg, 3);
    expect(single.units).toBeCloseTo(0.96 * 420, 6);
    expect(among.units).toBeCloseTo(0.96 * 420, 6);
  });

  it("answers on a strip with nothing drawn", () => {
    const review = reviewWalk({ ...walk(), panels: [] }, "life");
    expect(review.findings.filter(({ kind }) => kind !== "cannot-tell")).toEqual([]);
    expect(review.findings.length).toBeGreaterThanOrEqual(8);
    expect(review).toMatchObject({ steps: [], gapRow: [], hipCurve: { points: [], bands: [] } });
  });

  it("keeps a remark's place, source and both readings together", () => {
    for (const remark of reviewWalk(faulty, "trade").remarks) {
      expect(remark.panels.length).toBe(remark.frames.length);
      expect(remark.frames.toSorted((a, b) => a - b)).toEqual(remark.frames);
      expect(remark.source).not.toBe("");
      expect(remark.measured.unit).toBe(remark.expected.unit);
      expect(remark.beyond).toBeGreaterThan(0);
    }
  });
});

describe("step readings", () => {
  const [left] = reviewWalk(walk(), "trade").stepReadings;

  it("tell when, how far and how high", () => {
    expect(left?.frames).toEqual({ contact: 13, down: 16, passing: 19, up: 22, next: 25 });
    expect(left?.duration).toBe(12);
    expect(left?.length).toMatchObject({ kind: "value", unit: "leg" });
    expect(left?.length.kind === "value" && left.length.value).toBeCloseTo(0.72, 9);
    expect(left?.hipHeights.passing).toMatchObject({ kind: "value", unit: "leg" });
  });

  it("need the front view for the width", () => {
    expect(left?.width.kind === "value" && left.width.value).toBeCloseTo(0.11, 9);
    const panels = walk().panels.map((panel) => ({
      ...panel,
      marks: { ...panel.marks, front: {} },
    }));
    const [fromTheSide] = reviewWalk({ ...walk(), panels }, "trade").stepReadings;
    expect(fromTheSide?.width).toEqual({
      kind: "cannot-tell",
      needs: "the landing foot marked at both contacts, in the front view",
    });
  });

  it("have no length without the next contact", () => {
    const [, last] = reviewWalk(without(walk(), "end"), "trade").stepReadings;
    expect(last).toMatchObject({ duration: null, length: { kind: "cannot-tell" } });
  });
});

describe("the hip curve", () => {
  it("has a point for every panel, read or not", () => {
    const { points } = reviewWalk(
      unmark(walk(), "left up", ["left-hip", "right-hip"]),
      "trade",
    ).hipCurve;
    expect(points.map(({ frame }) => frame)).toEqual(walk().panels.map(({ frame }) => frame));
    expect(points.filter(({ height }) => height.kind === "cannot-tell")).toHaveLength(1);
  });

  it("by life follows the measured heights around the drawn contact", () => {
    const [band] = reviewWalk(walk(), "life").hipCurve.bands;
    lifeCurve.rows.forEach((row, tenth) => {
      const point = band?.points[tenth];
      const low = point?.low ?? Number.NaN;
      const high = point?.high ?? Number.NaN;
      expect(point?.frame).toBeCloseTo(13 + 12 * row.at, 9);
      expect(100 * ((low + high) / 2 - 0.93)).toBeCloseTo(row.mean, 6);
      expect((100 * (high - low)) / 4).toBeCloseTo(row.sd ?? 0, 6); // two sd either way
    });
  });

  it("by trade leaves open what the handbooks give no number for", () => {
    const [band] = reviewWalk(walk(), "trade").hipCurve.bands;
    expect(band?.points.map(({ frame }) => frame)).toEqual([16, 19, 22]);
    const [down, passing, up] = band?.points ?? [];
    expect(down?.low).toBeNull();
    expect(down?.high).toBeCloseTo(0.93, 9);
    expect(passing?.low).toBeCloseTo(0.93, 9);
    expect(passing?.high).toBeCloseTo(0.96, 9);
    expect(up?.low).toBeCloseTo(0.95, 9);
    expect(up?.high).toBeNull();
  });
});

describe("the gap row", () => {
  const cells = (judged: ReturnType<typeof walk>, yardstick: "trade" | "life") =>
    reviewWalk(judged, yardstick).gapRow.map(
      ({ frames, expected }) => `${frames}/${expected ?? "–"}`,
    );

  it("has a cell between each two panels", () => {
    expect(cells(walk(), "trade")).toEqual(["12/–", ...Array(8).fill("3/3")]);
  });

  it("marks the gaps that are remarked on", () => {
    const { gapRow } = reviewWalk(retime(walk(), "left passing", 21), "trade");
    expect(
      gapRow.filter(({ level }) => level !== null).map(({ from, to }) => `${from} → ${to}`),
    ).toEqual(["left down → left passing", "left passing → left up"]);
  });

  it("expects the drawn frame on the side of the drawing when the even one lies between two", () => {
    const onTwos = walk({ exposure: 2 }); // a quarter of 12 frames is 3; drawn are 2 and 4
    expect(cells(retime(onTwos, "left down", 15), "trade")[1]).toBe("2/2");
    expect(cells(retime(onTwos, "left down", 17), "trade")[1]).toBe("4/4");
  });

  it("expects nothing of a step whose poses stand in another order", () => {
    const early = retime(walk(), "left up", 18);
    expect(cells(early, "trade").slice(1, 5)).toEqual(["3/–", "2/–", "1/–", "6/–"]);
  });

  it("by life expects the passing at 0.6 and nothing of a stylised up", () => {
    expect(cells(walk(), "life").slice(1, 5)).toEqual(["3/1", "3/6", "3/–", "3/–"]);
  });
});

describe("the readings of a panel", () => {
  const readings = (panel: string, judged = walk({ precision: 0 })) =>
    reviewWalk(judged, "trade").readingsByPanel.get(panel) ?? [];
  const answer = (
    panel: string,
    id: string,
    side: string | null,
    judged = walk({ precision: 0 }),
  ) => readings(panel, judged).find((one) => one.id === id && one.side === side)?.answer;

  it("are heights, angles, the mass and what it stands on, each for itself", () => {
    expect(readings("left passing").map(({ id, side }) => `${id} ${side}`)).toEqual([
      "hip-height null",
      "knee-bend left",
      "knee-bend right",
      "foot-pitch left",
      "foot-pitch right",
      "weight-foot-flat left",
      "mass-height null",
      "mass-ahead left",
      "mass-beside left",
      "base-length null",
      "base-width null",
      "toe-height right",
      "hip-bend left",
      "hip-bend right",
      "ankle-bend left",
      "ankle-bend right",
      "elbow-bend left",
      "elbow-bend right",
      "trunk-lean null",
      "pelvis-tilt null",
      "shoulder-tilt null",
      ...["thigh", "shank", "foot", "upper-arm", "forearm"].flatMap((bone) => [
        `${bone}-length left`,
        `${bone}-length right`,
      ]),
      "neck-length null",
    ]);
  });

  it("tell how long the limbs are drawn, as far as they are marked", () => {
    const thigh = answer("left passing", "thigh-length", "left");
    expect(thigh?.kind === "value" && thigh.value).toBeCloseTo(0.46, 6); // the built figure's
    const open = unmark(walk(), "left passing", ["left-knee"]);
    expect(answer("left passing", "thigh-length", "left", open)).toBeUndefined();
  });

  it("tell how far inward of the standing ankle the mass is, from ahead, on either side alike", () => {
    const [left, right] = (["left", "right"] as const).map((side) =>
      answer(`${side} passing`, "mass-beside", side),
    );
    if (left?.kind !== "value" || right?.kind !== "value") throw new Error("the front is marked");
    expect(left.value).toBeGreaterThan(0);
    expect(left.value).toBeCloseTo(right.value, 6);
    const aside = shift(walk({ precision: 0 }), "left passing", ["left-ankle"], -0.1);
    const wider = answer("left passing", "mass-beside", "left", aside);
    expect(wider?.kind === "value" && wider.value).toBeGreaterThan(left.value);
  });

  it("bend the knee forward as positive, and the wrong way as negative", () => {
    const back = push(walk({ precision: 0 }), "left passing", ["left-knee"], -0.2);
    const bend = answer("left passing", "knee-bend", "left");
    const wrong = answer("left passing", "knee-bend", "left", back);
    expect(bend?.kind === "value" && bend.value).toBeGreaterThan(0);
    expect(wrong?.kind === "value" && wrong.value).toBeLessThan(0);
  });

  it("have a straight leg bend by nothing", () => {
    expect(answer("stand", "knee-bend", "left")).toMatchObject({
      kind: "value",
      value: 0,
      unit: "rad",
    });
  });

  it("see whether the foot that carries is flat", () => {
    expect(answer("left passing", "weight-foot-flat", "left")).toEqual({
      kind: "yes-no",
      value: true,
    });
    const heelUp = walk({ precision: 0 }).panels.map(
      (panel): WalkPanel => (panel.id === "left passing" ? lifted(panel) : panel),
    );
    const peeling = { ...walk({ precision: 0 }), panels: heelUp };
    expect(answer("left passing", "weight-foot-flat", "left", peeling)).toMatchObject({
      value: false,
    });
  });

  it("say what they need", () => {
    const open = unmark(walk(), "left passing", ["left-knee", "left-heel"]);
    expect(answer("left passing", "knee-bend", "left", open)).toEqual({
      kind: "cannot-tell",
      needs: "the left hip, knee and ankle marked in the side view",
    });
    expect(answer("left passing", "weight-foot-flat", "left", open)?.kind).toBe("cannot-tell");
    expect(answer("stand", "weight-foot-flat", null)?.kind).toBe("cannot-tell");
  });
});

/** The panel with its left heel a tenth of a leg off the ground: 29° over a foot of 0.18. */
function lifted(panel: WalkPanel): WalkPanel {
  const heel = panel.marks.side["left-heel"];
  if (heel === undefined) return panel;
  const side = { ...panel.marks.side, "left-heel": { ...heel, y: heel.y - 42 } };
  return { ...panel, marks: { ...panel.marks, side } };
}
