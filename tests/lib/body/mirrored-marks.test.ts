import { describe, expect, it } from "vitest";
import { JOINTS, mirroredMarks, partnerOf } from "../../../lib/body";

const at = (x: number) => ({ x, y: 500, precision: 2 });

describe("the pose of the other step", () => {
  it("exchanges left and right from the side and turns nothing", () => {
    const marks = { head: at(300), "left-toe": at(500), "right-toe": at(200) };
    expect(mirroredMarks(marks, "side")).toEqual({
      head: at(300),
      "right-toe": at(500),
      "left-toe": at(200),
    });
  });

  it("turns the front view about the middle of the paper", () => {
    const marks = { head: at(350), "left-hip": at(400) };
    expect(mirroredMarks(marks, "front")).toEqual({ head: at(370), "right-hip": at(320) });
  });

  it("leaves a load on its shoulder", () => {
    expect(mirroredMarks({ load: at(1) }, "side")).toEqual({});
  });

  it("comes back when it is done twice", () => {
    const marks = { neck: at(360), "left-hip": at(401), "right-knee": at(300) };
    for (const view of ["side", "front"] as const) {
      expect(mirroredMarks(mirroredMarks(marks, view), view)).toEqual(marks);
    }
    for (const joint of JOINTS) expect(partnerOf(partnerOf(joint))).toBe(joint);
  });
});
