import { describe, expect, it } from "vitest";
import { opensAt, sortLinks } from "../../../app/_people/sort-links";

const NOW = 100;

const link = (
  name: string,
  createdAt: number,
  {
    revokedAt = null,
    expiresAt = null,
  }: { revokedAt?: number | null; expiresAt?: number | null } = {},
) => ({
  link: name,
  role: "draw" as const,
  label: "",
  createdAt,
  expiresAt,
  revokedAt,
  usedAt: null,
});

describe("the list of links", () => {
  it("has those that still open the sheet first, the newest on top", () => {
    const sorted = sortLinks(
      [link("old", 1), link("closed", 9, { revokedAt: 10 }), link("new", 5)],
      NOW,
    );
    expect(sorted.map((entry) => entry.link)).toEqual(["new", "old", "closed"]);
  });

  it("has those that have ended at its end, beside those that were revoked", () => {
    const sorted = sortLinks(
      [
        link("ended", 9, { expiresAt: NOW }),
        link("revoked", 8, { revokedAt: 20, expiresAt: 500 }),
        link("for a while", 2, { expiresAt: NOW + 1 }),
        link("for good", 1),
      ],
      NOW,
    );
    expect(sorted.map((entry) => entry.link)).toEqual([
      ...["for a while", "for good", "ended", "revoked"],
    ]);
  });

  it("takes a link for open until the very moment at which it ends", () => {
    const ending = link("ending", 1, { expiresAt: NOW });
    expect([opensAt(ending, NOW - 1), opensAt(ending, NOW)]).toEqual([true, false]);
    expect(opensAt(link("revoked", 1, { revokedAt: NOW }), NOW - 1)).toBe(false); // whatever the clock here says
  });
});
