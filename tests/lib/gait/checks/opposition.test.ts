import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Finding, reviewWalk, type Walk } from "../../../../lib/gait";
import strides from "../../../reference/captured-strides.json";
import { capturedWalk } from "../../../support/captured";
import { CAPTURED_POSES, capturedClips } from "../../../support/captured-clips";
import { type PanelName, push, unmark, walk } from "../../../support/walk";

const found = (judged: Walk): readonly Finding[] =>
  reviewWalk(judged, "trade").findings.filter(({ check }) => check === "opposition");
const remark = (judged: Walk) => found(judged).find((one) => one.kind === "remark");

/** The hand of the foot ahead so far ahead of the other. */
const sameSide = (name: PanelName, side: "left" | "right", legs: number): Walk =>
  push(walk(), name, [`${side}-wrist`], legs);

describe("arms against legs", () => {
  it("are sound while they hang, and where they swing against the legs", () => {
    expect(found(walk()).map(({ kind }) => kind)).toEqual(["sound", "sound"]);
    expect(remark(sameSide("left contact", "right", 0.4))).toBeUndefined();
  });

  it("name the side, the hand and the toe where they swing with them", () => {
    expect(remark(sameSide("right contact", "right", 0.3))).toMatchObject({
      level: "may-show",
      side: "right",
      panels: ["right contact"],
      spots: [{ panel: "right contact", view: "side", joints: ["right-wrist", "right-toe"] }],
      title: "Right arm swings with the right leg",
      why: expect.stringContaining(
        "At the contact, frame 25, the right foot is ahead, and so is the right hand, by 30.0 ± 0.7 % of a leg; up to 5.0 % passes as hanging.",
      ),
    });
  });

  it.each([
    { times: 2, named: true },
    { times: 0.5, named: false },
  ])("at $times times the threshold: named $named", ({ times, named }) => {
    expect(remark(sameSide("left contact", "left", times * 0.05)) !== undefined).toBe(named);
  });

  it("cannot tell without both wrists", () => {
    expect(found(unmark(walk(), "left contact", ["left-wrist"]))[0]).toMatchObject({
      kind: "cannot-tell",
      needs: "both wrists marked in the side view of the contact at frame 13",
    });
  });

  it("are not judged in a child's walk, which says so once", () => {
    const child = { ...sameSide("left contact", "left", 0.4), kind: "child" } as const;
    expect(found(child)).toEqual([]);
    expect(reviewWalk(child, "trade").quieted.map(({ check }) => check)).toContain("opposition");
  });

  it.each(strides.walks)("never swing with the legs in captured walk $clip", (captured) => {
    expect(remark(capturedWalk(captured))).toBeUndefined();
  });
});

describe.skipIf(!existsSync(CAPTURED_POSES))("arms in every captured clip", () => {
  it("never swing with the legs: 0 of all contacts", () => {
    const told = capturedClips().flatMap(({ walk: clip }) => found(clip));
    expect(told.length).toBeGreaterThanOrEqual(30);
    expect(told.map(({ kind }) => kind)).toEqual(told.map(() => "sound"));
  });
});
