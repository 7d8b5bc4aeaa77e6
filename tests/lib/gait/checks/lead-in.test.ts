import { describe, expect, it } from "vitest";
import { applyFix, type Finding, fixFor, reviewWalk, type Walk } from "../../../../lib/gait";
import reference from "../../../reference/captured-strides.json";
import { capturedWalk } from "../../../support/captured";
import { ledIn } from "../../../support/led-in";
import { mirroredWalk } from "../../../support/mirrored-walk";
import { carry, moveFoot, panelOf } from "../../../support/seeded/posed";
import { type Drawn, unmark, walk } from "../../../support/walk";

const told = (judged: Walk): readonly Finding[] =>
  reviewWalk(judged, "trade").findings.filter(({ check }) => check === "lead-in");
const remarks = (judged: Walk) => told(judged).filter((one) => one.kind === "remark");
const led = (drawn: Drawn = {}) => ledIn(walk(drawn));
/** The right foot stays, so this is away from it. */
const awayFromIt = (by: number) => carry(led(), "lead-in", { right: -by });
const withPanel = (from: Walk, id: string, change: Partial<Walk["panels"][number]>): Walk => ({
  ...from,
  panels: from.panels.map((panel) => (panel.id === id ? { ...panel, ...change } : panel)),
});

describe("a walk that sets off", () => {
  it("is sound where a foot stays, the body goes over it, and the loop comes after", () => {
    expect(told(led())).toMatchObject([
      { kind: "sound", side: "right", panels: ["stand", "lead-in"], measured: { unit: "leg" } },
    ]);
    expect(told(ledIn(mirroredWalk(walk())))).toMatchObject([{ kind: "sound", side: "left" }]);
  });

  it("has nothing out of place without a lead-in", () => {
    expect(told(walk())).toMatchObject([{ kind: "sound", measured: null, panels: [] }]);
  });

  it("is seen to slide where the foot that stays comes forward first, and says how far", () => {
    const crept = moveFoot(led(), "lead-in", "right", { ahead: 0.08 });
    expect(remarks(crept)).toMatchObject([
      {
        level: "may-show",
        side: "right",
        panels: ["stand", "lead-in"],
        spots: [
          { panel: "stand", view: "side", joints: ["right-ball"] },
          { panel: "lead-in", view: "side" },
        ],
        title: "Right foot moves before it steps off",
        why: expect.stringMatching(
          /moves 8\.0 ± 0\.5 % of a leg forward from frame 1 to 7; up to 4\.0 %/,
        ),
      },
    ]);
  });

  it("passes 4 % forward and 2 % back, as any planted foot does, and not more", () => {
    const by = (ahead: number) => moveFoot(led({ precision: 0 }), "lead-in", "right", { ahead });
    for (const passes of [0.039, -0.019]) expect(remarks(by(passes))).toEqual([]);
    expect(remarks(by(0.041))).toHaveLength(1);
    expect(remarks(by(-0.021))).toMatchObject([{ why: expect.stringMatching(/2\.1 % .* back/) }]);
  });

  it("keeps silent about the foot on the spot, where nothing places a stand", () => {
    const crept = moveFoot(led(), "lead-in", "right", { ahead: 0.08 });
    expect(told({ ...crept, travel: "on-the-spot" }).map(({ kind }) => kind)).toEqual(["sound"]);
    const solved = told({ ...crept, travel: "on-the-spot", ground: "solved" });
    expect(solved).toMatchObject([{ kind: "remark", panels: ["stand", "lead-in"] }]);
  });

  it("follows the foot to the first contact, where its heel may be up", () => {
    const from = led();
    const contact = moveFoot(from, "left contact", "right", { ahead: -0.06 });
    expect(remarks(contact)).toMatchObject([{ panels: ["stand", "left contact"], side: "right" }]);
  });

  it("may seem to lift a foot by itself where the body goes the other way, or not at all", () => {
    expect(remarks(awayFromIt(0.05))).toMatchObject([
      {
        level: "may-show",
        side: "right",
        panels: ["stand", "lead-in"],
        spots: [{ view: "front", joints: ["left-hip", "right-hip"] }, { view: "front" }],
        measured: { value: expect.closeTo(-0.025, 10) },
        expected: { value: 0.01 },
        title: "Body does not go over the right foot",
        why: expect.stringMatching(/2\.5 ± 0\.6 % of a leg away from the right foot.*1\.0 %/),
      },
    ]);
    expect(remarks(awayFromIt(0.025))).toHaveLength(1);
  });

  it("leaves open whether 1 % is reached where the marks do not say", () => {
    expect(remarks(awayFromIt(0.018))).toEqual([]); // 0.7 ± 0.6 %
  });

  it("does not mind where on the paper it is drawn, nor in which panel the foot is up first", () => {
    const from = led();
    const all = (marks: Walk["panels"][number]["marks"]["front"]) =>
      Object.fromEntries(Object.entries(marks).map(([id, one]) => [id, { ...one, x: one.x + 90 }]));
    const { marks } = panelOf(from, "lead-in");
    const moved = withPanel(from, "lead-in", { marks: { ...marks, front: all(marks.front) } });
    expect(told(moved).map(({ kind }) => kind)).toEqual(["sound"]);
  });

  it("is asked at the first pose that has the other foot up", () => {
    const from = awayFromIt(0.05);
    const later = { ...panelOf(led(), "lead-in"), id: "later", frame: 9 };
    const panels = [...from.panels, later].toSorted((a, b) => a.frame - b.frame);
    expect(remarks({ ...from, panels })).toMatchObject([{ panels: ["stand", "lead-in"] }]);
    const both = withPanel({ ...from, panels }, "lead-in", {
      marks: panelOf(from, "stand").marks,
      place: panelOf(from, "stand").place,
    });
    expect(remarks(both)).toEqual([]);
  });

  it("leads in once: at the first contact and after it a lead-in stands inside the loop", () => {
    const inside = withPanel(led(), "left down", { pose: "lead-in" });
    expect(remarks(inside)).toMatchObject([
      {
        panels: ["left contact", "left down"],
        frames: [13, 16],
        measured: { value: 1, unit: "poses" },
        expected: { value: 0 },
        why: expect.stringContaining("frame 16"),
      },
    ]);
  });

  it("cannot be told without a stand, a place, a front view or a side, and says which", () => {
    const from = led();
    const needs = (judged: Walk) =>
      told(judged).flatMap((one) => (one.kind === "cannot-tell" ? [one.needs] : []));
    const noStand = { ...from, panels: from.panels.filter(({ id }) => id !== "stand") };
    expect(needs(noStand)).toEqual(["the stand that the lead-in leaves"]);
    const unplaced = withPanel(from, "stand", { place: null });
    expect(needs(unplaced)).toEqual([expect.stringContaining("placed on the ground by hand")]);
    expect(needs({ ...from, panels: [] })).toHaveLength(1);
    const blind = unmark(from, "stand", ["left-hip"], ["front"]);
    expect(needs(blind)).toEqual([expect.stringContaining("front view")]);
    const nobodys = { ...from, panels: from.panels.map((one) => ({ ...one, weightOn: null })) };
    expect(needs(nobodys)).toEqual(["to know whose weight the step carries"]);
  });

  it("cannot be told by marks that are placed roughly, and never calls such a walk sound", () => {
    const rough = told(led({ precision: 0.03 }));
    expect(rough).toMatchObject([
      { kind: "cannot-tell", needs: "the hips and the right foot marked more exactly" },
    ]);
    const rougher = told(led({ precision: 0.06 }));
    expect(rougher).toMatchObject([
      { kind: "cannot-tell", needs: "the right ball and toe marked more exactly" },
      { kind: "cannot-tell", needs: "the hips and the right foot marked more exactly" },
    ]);
  });

  it("is not asked of a free walk", () => {
    expect(told({ ...awayFromIt(0.05), kind: "free" })).toEqual([]);
  });
});

describe("the fix of a lead-in", () => {
  const settled = (judged: Walk) => {
    const [remark] = remarks(judged);
    const fix = remark === undefined ? null : fixFor(judged, remark);
    return fix === null ? null : { fix, after: remarks(applyFix(judged, fix)) };
  };

  it("calls one inside the loop a breakdown", () => {
    const again = { ...panelOf(led(), "left passing"), id: "again", frame: 20 };
    const panels = [...led().panels, { ...again, pose: "lead-in" as const }];
    const inside = { ...led(), panels: panels.toSorted((a, b) => a.frame - b.frame) };
    expect(settled(inside)).toMatchObject({
      fix: {
        title: "Frame 20: call it breakdown",
        changes: [{ kind: "relabel", panel: "again", pose: "breakdown", weightOn: "left" }],
      },
      after: [],
    });
  });

  it("puts the foot on its print, and the body over the foot", () => {
    const crept = moveFoot(led(), "lead-in", "right", { ahead: 0.08 });
    expect(settled(crept)).toMatchObject({
      fix: { title: "Put the right foot on its footprint" },
      after: [],
    });
    expect(settled(awayFromIt(0.05))).toMatchObject({
      fix: { title: "Shift the body of the lead-in to the right by 5.6 % of a leg" },
      after: [],
    });
  });
});

/** People who walk go from both feet onto one: from contact to passing, which leads in as a stand would. */
describe("captured bodies", () => {
  it("go over the foot that stays by more than 1 % of a leg from both feet to one, but for one of them", () => {
    const shifts = reference.walks.flatMap((captured) => {
      const stride = capturedWalk(captured);
      return (["left", "right"] as const).map((side) => {
        const of = (pose: string) =>
          stride.panels.find((panel) => panel.pose === pose && panel.weightOn === side);
        const [contact, passing] = [of("contact"), of("passing")];
        if (contact === undefined || passing === undefined) throw new Error("no step");
        const panels = [
          { ...contact, id: "stand", pose: "stand" as const, frame: 1 },
          { ...passing, id: "lead-in", pose: "lead-in" as const, frame: 2 },
        ];
        return remarks({ ...stride, panels }).length;
      });
    });
    expect(shifts.length).toBeGreaterThanOrEqual(10);
    expect(shifts.filter((count) => count > 0).length).toBeLessThanOrEqual(1);
  });
});
