import { describe, expect, it } from "vitest";
import { NO_PENCILS, pencilsOn } from "../../../app/_people/pencils-on";
import type { Person } from "../../../app/_room";

const person = (client: number, at: Partial<Person> = {}): Person => ({
  client,
  name: `person ${client}`,
  hue: 265,
  panel: "down",
  view: "side",
  pointer: [100, 200],
  ...at,
});
const PAPER = { panel: "down", view: "side" } as const;

describe("the others' pencils on a paper", () => {
  it("shows who points at this view of this panel", () => {
    const others = [
      person(1),
      person(2, { view: "front" }),
      person(3, { panel: "up" }),
      person(4, { pointer: [5, 6], hue: 140 }),
    ];
    expect(pencilsOn(others, PAPER)).toEqual([
      { client: 1, hue: 265, x: 100, y: 200 },
      { client: 4, hue: 140, x: 5, y: 6 },
    ]);
  });

  it("lets a pencil go when its hand leaves the paper", () => {
    expect(pencilsOn([person(1, { panel: null, view: null, pointer: null })], PAPER)).toBe(
      NO_PENCILS,
    );
  });

  it("hands back the same list while nothing on this paper moves", () => {
    const before = pencilsOn([person(1), person(2, { panel: "up" })], PAPER);
    const elsewhere = [person(1), person(2, { panel: "up", pointer: [9, 9] })];
    expect(pencilsOn(elsewhere, PAPER, before)).toBe(before);
    expect(pencilsOn([person(1, { pointer: [101, 200] })], PAPER, before)).not.toBe(before);
  });
});
