import { describe, expect, it } from "vitest";
import { SIDES } from "../../../lib/body";
import type { Walk } from "../../../lib/gait";
import { studyWalk } from "../../../lib/gait/study";
import { walkMotion } from "../../../lib/gait/walk-motion";
import { raise, walk, withPanel } from "../../support/walk";

const of = (judged: Walk) => walkMotion(studyWalk(judged, "trade"));

describe("a walk as motion", () => {
  it("goes through its panels over the ground, without the stand", () => {
    const { motion, panelOf } = of(walk());
    expect(motion.keys.map((key) => panelOf.get(key)?.id)).toEqual(
      walk()
        .panels.map(({ id }) => id)
        .filter((id) => id !== "stand"),
    );
    expect([motion.from, motion.to]).toEqual([13, 37]);
    const [start, end] = [motion.at(13), motion.at(37)];
    const along = (end?.side["left-hip"]?.x ?? 0) - (start?.side["left-hip"]?.x ?? 0);
    expect(along).toBeCloseTo(2 * 0.72, 9); // two steps
  });

  it("stands on each foot from its contact until the other's down", () => {
    const { motion } = of(walk());
    const stands = motion.keys.map(({ planted }) =>
      [planted.left === null ? "" : "l", planted.right === null ? "" : "r"].join(""),
    );
    expect(stands).toEqual(["lr", "l", "l", "l", "lr", "r", "r", "r", "lr"]);
  });

  it("lets no foot go through the ground where a pose comes right after it left", () => {
    // The rear foot leaves at 0.24 of the step and the down stands at a quarter: 0.12 frames between them.
    const { motion } = of(walk());
    const lowest = Array.from({ length: 49 }, (_, nth) => {
      const side = motion.at(13 + nth / 2)?.side;
      const soles = SIDES.flatMap((one) =>
        (["heel", "ball", "toe"] as const).map((part) => side?.[`${one}-${part}`]?.y ?? Number.NaN),
      );
      return Math.min(...soles);
    });
    expect(Math.min(...lowest)).toBeGreaterThan(-0.01);
  });

  it("goes on where the last contact is the first again, and not where it is not", () => {
    expect(of(walk()).motion.at(39)?.side["left-hip"]?.x).toBeGreaterThan(
      of(walk()).motion.at(37)?.side["left-hip"]?.x ?? 0,
    );
    const { motion } = of(withPanel(walk(), "end", { weightOn: "right" }));
    expect(motion.at(39)).toEqual(motion.at(37));
  });

  it("works out only the spans around a panel that was changed", () => {
    const before = walk();
    const spans = of(before).motion.spans;
    const changed = raise(before, "right passing", 0.01);
    const after = of(changed).motion.spans;
    expect(after.filter((span) => !spans.includes(span))).toHaveLength(4);
  });
});
