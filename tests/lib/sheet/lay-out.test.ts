import { describe, expect, it } from "vitest";
import { advanceOf, defaultBrief, layOut } from "../../../lib/sheet";
import { ids } from "../../support/peers";

const rows = (brief: Partial<typeof defaultBrief>) =>
  layOut({ ...defaultBrief, ...brief }, ids()).panels.map(
    ({ frame, pose, weightOn }) => `${frame} ${pose} ${weightOn ?? "nobody"}`,
  );
const frames = (brief: Partial<typeof defaultBrief>) =>
  layOut({ ...defaultBrief, ...brief }, ids()).panels.map(({ frame }) => frame);

describe("laying out a strip", () => {
  // The trade's count for 12 frames a step: Williams, The Animator's Survival Kit (2001).
  it("gives 1 4 7 10 13 16 19 22 25 for 12 frames a step", () => {
    expect(rows({})).toEqual([
      "1 contact left",
      "4 down left",
      "7 passing left",
      "10 up left",
      "13 contact right",
      "16 down right",
      "19 passing right",
      "22 up right",
      "25 contact left",
    ]);
  });

  it("puts the stand and the lead-in before the loop, which starts one step after frame 1", () => {
    const sheet = layOut({ ...defaultBrief, leadIn: true }, ids());
    expect(rows({ leadIn: true }).slice(0, 4)).toEqual([
      "1 stand nobody",
      "7 lead-in right",
      "13 contact left",
      "16 down left",
    ]);
    expect(sheet.head.loop).toEqual({ from: 13, to: 37 });
    expect(sheet.panels.at(-1)?.frame).toBe(37);
  });

  it("gives each side its own frames", () => {
    expect(frames({ framesPerStep: { left: 8, right: 16 } })).toEqual([
      1, 3, 5, 7, 9, 13, 17, 21, 25,
    ]);
  });

  it("draws on odd frames only on twos, and keeps the contacts of an even step", () => {
    const onTwos = frames({ exposure: 2, leadIn: true });
    expect(onTwos.every((frame) => frame % 2 === 1)).toBe(true);
    expect([onTwos[0], onTwos[2], onTwos[6], onTwos[10]]).toEqual([1, 13, 25, 37]);
  });

  it.each([
    [13, 14],
    [9, 10],
    [12, 12],
  ])("lays %i frames a step on twos out as %i, and says so in the head", (asked, real) => {
    for (const leadIn of [false, true]) {
      const framesPerStep = { left: asked, right: asked };
      const { head, panels } = layOut(
        { ...defaultBrief, exposure: 2, leadIn, framesPerStep },
        ids(),
      );
      const contacts = panels.filter(({ pose }) => pose === "contact").map(({ frame }) => frame);
      const [first = 0, second = 0, third = 0] = contacts;
      expect([second - first, third - second]).toEqual([real, real]);
      expect(head.framesPerStep).toEqual({ left: real, right: real });
      expect(head.advance).toBeCloseTo(0.78 / real, 12);
      expect(head.loop).toEqual({ from: first, to: third });
    }
  });

  it("gives each pose a drawn frame of its own, from four exposures a step", () => {
    for (const exposure of [1, 2] as const) {
      for (let step = 4 * exposure; step <= 240; step += 1) {
        const laid = frames({ exposure, framesPerStep: { left: step, right: 4 * exposure } });
        expect(laid.every((frame) => (frame - 1) % exposure === 0)).toBe(true);
        expect(new Set(laid).size).toBe(9);
      }
    }
    const fewer = frames({ exposure: 2, framesPerStep: { left: 6, right: 6 } });
    expect(new Set(fewer).size).toBeLessThan(9);
  });

  it("leaves every place to the advance, and every panel empty, under an id of its own", () => {
    for (const travel of ["on-the-spot", "travelling"] as const) {
      const { panels } = layOut({ ...defaultBrief, travel }, ids());
      expect(panels.every(({ place, hold }) => place === null && hold === 0)).toBe(true);
      expect(panels.every(({ marks }) => Object.keys(marks.side).length === 0)).toBe(true);
      expect(new Set(panels.map(({ id }) => id)).size).toBe(9);
    }
  });

  it("works out the advance over both steps", () => {
    const framesPerStep = { left: 12, right: 14 };
    const { head } = layOut({ ...defaultBrief, framesPerStep }, ids());
    expect(head.advance).toBeCloseTo(0.06, 12); // 2 × 0.78 / 26
    expect(advanceOf(0.78, framesPerStep)).toBe(head.advance);
  });

  it("refuses a step of no frames", () => {
    const none = { ...defaultBrief, framesPerStep: { left: 0, right: 12 } };
    expect(() => layOut(none, ids())).toThrow(RangeError);
  });
});
