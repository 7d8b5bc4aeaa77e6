import { describe, expect, it } from "vitest";
import { panelAfter } from "../../../app/_strip/panel-after";
import { defaultBrief, layOut, type Sheet } from "../../../lib/sheet";
import { ids } from "../../support/peers";

/** A strip with panels on just these frames, passing poses of the left step. */
function on(frames: readonly number[], exposure: 1 | 2, framesPerStep = 12): Sheet {
  const step = { left: framesPerStep, right: framesPerStep };
  const laid = layOut({ ...defaultBrief, exposure, framesPerStep: step }, ids());
  const [panel] = laid.panels;
  if (panel === undefined) throw new Error("no panel");
  const panels = frames.map((frame) => ({
    ...panel,
    ...{ id: `at ${frame}`, frame, pose: "passing" as const, weightOn: "left" as const },
  }));
  return { ...laid, panels };
}

describe("a panel added behind another", () => {
  it.each([
    [1, 1, 5, 3],
    [1, 1, 4, 2],
    [1, 1, 3, 2],
    [1, 1, 2, 1],
    [2, 1, 5, 3],
    [2, 1, 7, 3],
    [2, 3, 9, 5],
    [2, 1, 3, 1],
    [2, 3, 6, 5],
    [2, 4, 7, 5],
  ] as const)("on %is, between %i and %i, comes on %i", (exposure, first, second, frame) => {
    const added = panelAfter(on([first, second], exposure), `at ${first}`);
    expect(added).toEqual({ frame, pose: "breakdown", weightOn: "left" });
  });

  it.each([
    [1, 7, 12, 10],
    [2, 7, 12, 11],
    [2, 7, 8, 9],
    [2, 8, 8, 11],
    [1, 7, 1, 8],
    [2, 7, 2, 9],
  ] as const)(
    "on %is, behind the last at %i of %i frames a step, comes on %i",
    (exposure, last, framesPerStep, frame) => {
      const added = panelAfter(on([last], exposure, framesPerStep), `at ${last}`);
      expect(added).toEqual({ frame, pose: "up", weightOn: "left" });
    },
  );
});
