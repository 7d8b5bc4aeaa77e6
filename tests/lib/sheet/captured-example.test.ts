import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { frontToGround, PANEL, sideToGround } from "../../../lib/body";
import { reviewWalk } from "../../../lib/gait";
import { capturedExample, walkOf } from "../../../lib/sheet";
import reference from "../../reference/captured-stride.json";
import { ids } from "../../support/peers";

const sheet = capturedExample(ids());

describe("the captured example", () => {
  it("holds one stride of nine panels, in frames of 24 a second", () => {
    expect(sheet.panels.map(({ frame, pose, weightOn }) => `${frame} ${pose} ${weightOn}`)).toEqual(
      reference.panels.map(({ frame, pose, weightOn }) => `${frame} ${pose} ${weightOn}`),
    );
    expect(sheet.head.loop).toEqual({ from: 1, to: 26 });
  });

  it("puts the hips, heels and knees where the capture has them", () => {
    for (const row of reference.panels) {
      const panel = sheet.panels.find(({ frame }) => frame === row.frame);
      if (panel === undefined) throw new RangeError(`no panel at frame ${row.frame}`);
      const stretch = { place: panel.place ?? Number.NaN, legLength: PANEL.plainLeg };
      for (const { joint, ground } of row.marks) {
        const side = panel.marks.side[joint as "left-hip"];
        const front = panel.marks.front[joint as "left-hip"];
        if (side === undefined || front === undefined) throw new RangeError(`no ${joint}`);
        const [x = 0, y = 0, z = 0] = ground;
        // Marks are kept to a hundredth of a panel unit, 0.00002 of a leg; the figures to 0.0001.
        expect(sideToGround(side, stretch).x).toBeCloseTo(x, 3);
        expect(sideToGround(side, stretch).y).toBeCloseTo(y, 3);
        expect(frontToGround(front, stretch.legLength).z).toBeCloseTo(z, 3);
        expect(front.y).toBe(side.y);
      }
    }
  });

  it("says how exactly each mark is known: joints exactly, soles to 3 % of a leg", () => {
    for (const { marks } of sheet.panels) {
      expect(marks.side["left-knee"]?.precision).toBe(0);
      expect(marks.side.head?.precision).toBe(0);
      for (const joint of ["left-heel", "right-ball", "left-toe"] as const) {
        expect(marks.side[joint]?.precision).toBeCloseTo(12.6, 10);
      }
      expect(Object.keys(marks.side).length).toBe(20);
      expect(Object.keys(marks.front).length).toBe(20);
    }
  });

  it("shows nothing when it is held against life", () => {
    const { remarks, cannotTell, findings } = reviewWalk(walkOf(sheet), "life");
    expect(remarks.filter(({ level }) => level === "shows")).toEqual([]);
    expect(cannotTell).toEqual([]);
    expect(findings.length).toBeGreaterThan(5);
  });

  it("carries the line that its source asks for", () => {
    expect(sheet.head.credit).toContain(
      "The data used in this project was obtained from mocap.cs.cmu.edu. " +
        "The database was created with funding from NSF EIA-0196217.",
    );
  });

  const poses = new URL("../../../../shared/reference/walks/poses.json", import.meta.url);
  it.skipIf(!existsSync(poses))("has every figure of the captured walk it names", () => {
    const { "39_01": clip } = JSON.parse(readFileSync(poses, "utf8"));
    const first = clip.steps[0].poses.contact;
    const last = clip.steps[1].poses.next_contact;
    const travelled = (last.points.pelvis[0] - first.points.pelvis[0]) / clip.leg_length;
    expect(sheet.panels.at(-1)?.place).toBeCloseTo(travelled, 4);
    const stretch = { place: 0, legLength: PANEL.plainLeg };
    const names = { l: "left", r: "right" } as const;
    for (const [name, [x, y, left]] of Object.entries<number[]>(first.points) as [
      string,
      [number, number, number],
    ][]) {
      if (["pelvis", "com", "head_top"].includes(name)) continue;
      const joint = name.replace(/^([lr])_/, (_, side: "l" | "r") => `${names[side]}-`);
      const mark = sheet.panels[0]?.marks.side[joint as "left-hip"];
      const front = sheet.panels[0]?.marks.front[joint as "left-hip"];
      if (mark === undefined || front === undefined) throw new RangeError(`no ${joint}`);
      const at = sideToGround(mark, stretch);
      expect(at.x).toBeCloseTo((x - first.points.pelvis[0]) / clip.leg_length, 4);
      expect(at.y).toBeCloseTo(y / clip.leg_length, 4);
      // The source's z runs to his left, ours to his right.
      expect(frontToGround(front, PANEL.plainLeg).z).toBeCloseTo(-left / clip.leg_length, 4);
    }
  });
});
