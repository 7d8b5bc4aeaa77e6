import { describe, expect, it } from "vitest";
import { breakRows } from "../../../lib/export/break-rows";

/** Panels by a letter each: s stand, l lead-in, c contact, d down, p passing, u up. */
const strip = (letters: string) =>
  [...letters].map((letter) => ({ pose: POSES[letter] ?? ("breakdown" as const) }));
const POSES: Readonly<Record<string, "stand" | "lead-in" | "contact" | "down" | "passing" | "up">> =
  { s: "stand", l: "lead-in", c: "contact", d: "down", p: "passing", u: "up" };
const sizes = (letters: string, rows: number) =>
  breakRows(strip(letters), rows).map(({ length }) => length);

describe("a strip broken into rows", () => {
  it("is broken before a contact, as evenly as that allows", () => {
    expect(sizes("cdpucdpuc", 2)).toEqual([4, 5]);
    expect(sizes("slcdpucdpuc", 2)).toEqual([6, 5]);
    expect(sizes("cdpucdpucdpucdpu", 2)).toEqual([8, 8]);
  });

  it("tears a step where whole steps would make rows too uneven", () => {
    expect(sizes("cdpucdpu", 3)).toEqual([2, 2, 4]);
    expect(Math.max(...sizes("cdddddddddddddddc", 2))).toBe(9);
  });

  it("keeps every panel, once and in order, in rows that are never empty", () => {
    for (let count = 0; count <= 14; count += 1) {
      const panels = strip("slcdpucdpucdpu".slice(0, count));
      for (let rows = 1; rows <= 6; rows += 1) {
        const broken = breakRows(panels, rows);
        expect(broken.flat()).toEqual(panels);
        expect(broken.every(({ length }) => length > 0)).toBe(true);
        expect(broken).toHaveLength(Math.min(rows, count));
      }
    }
  });
});
