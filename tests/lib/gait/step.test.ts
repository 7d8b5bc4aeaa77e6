import { describe, expect, it } from "vitest";
import { findSteps, type Walk } from "../../../lib/gait";
import { walk, without, withPanel } from "../../support/walk";

const read = ({ panels }: Walk) =>
  findSteps(panels).map((step) =>
    [step.contact, step.down, step.passing, step.up, step.next].map((panel) => panel?.id ?? "–"),
  );

describe("steps", () => {
  it("are found from contact to the other foot's contact", () => {
    expect(read(walk())).toEqual([
      ["left contact", "left down", "left passing", "left up", "right contact"],
      ["right contact", "right down", "right passing", "right up", "end"],
    ]);
  });

  it("leave out the stand", () => {
    expect(
      findSteps(walk().panels).flatMap(({ panels }) => panels.map(({ id }) => id)),
    ).not.toContain("stand");
  });

  it("say which pose was not drawn", () => {
    expect(read(without(walk(), "left passing"))[0]?.[2]).toBe("–");
  });

  it("have no next contact at the end of an open strip", () => {
    expect(read(without(walk(), "end"))[1]?.[4]).toBe("–");
  });

  it("do not end on a second contact of the same foot", () => {
    expect(read(without(walk(), "right contact"))[0]?.[4]).toBe("–");
  });

  it("take the side from the other poses when the contact does not say", () => {
    const silent = withPanel(walk(), "left contact", { weightOn: null });
    expect(findSteps(silent.panels)[0]?.weightOn).toBe("left");
  });

  it("pass over a pose that carries the other side's weight", () => {
    const mixed = withPanel(walk(), "left down", { weightOn: "right" });
    expect(read(mixed)[0]?.[1]).toBe("–");
  });

  it("are none on an empty strip", () => {
    expect(findSteps([])).toEqual([]);
  });
});
