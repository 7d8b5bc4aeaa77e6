import { describe, expect, it } from "vitest";
import { sortLinks } from "../../../app/_people/sort-links";

const link = (name: string, createdAt: number, revokedAt: number | null = null) => ({
  link: name,
  role: "draw" as const,
  label: "",
  createdAt,
  expiresAt: null,
  revokedAt,
  usedAt: null,
});

describe("the list of links", () => {
  it("has those that still open the sheet first, the newest on top", () => {
    const sorted = sortLinks([link("old", 1), link("closed", 9, 10), link("new", 5)]);
    expect(sorted.map((entry) => entry.link)).toEqual(["new", "old", "closed"]);
  });
});
