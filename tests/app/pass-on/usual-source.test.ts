import { describe, expect, it } from "vitest";
import { usualSource } from "../../../app/_pass-on/usual-source";
import { capturedExample, type Panel } from "../../../lib/sheet";
import { ids } from "../../support/peers";

const { panels } = capturedExample(ids());
const at = (index: number): Panel => {
  const panel = panels[index];
  if (panel === undefined) throw new RangeError(`no panel ${index}`);
  return panel;
};
const bare = (panel: Panel): Panel => ({ ...panel, marks: { side: {}, front: {} } });

describe("where a pose usually comes from", () => {
  it("is the panel before, or the nearest that has anything on it", () => {
    expect(usualSource(panels, at(3), "copy-pose")).toBe(at(2));
    const emptied = panels.map((panel, n) => (n < 3 ? bare(panel) : panel));
    expect(usualSource(emptied, at(3), "copy-foot")?.id).toBe(at(4).id);
    expect(usualSource(panels.map(bare), at(3), "copy-pose")).toBeNull();
  });

  it("is the same pose of the other step for a mirrored one", () => {
    const source = usualSource(panels, at(4), "mirror-pose");
    expect([source?.pose, source?.weightOn]).toEqual(["contact", "left"]);
    expect(at(4).weightOn).toBe("right");
  });
});
