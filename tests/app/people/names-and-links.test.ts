import { describe, expect, it } from "vitest";
import { linkAddress } from "../../../app/_people/link-address";
import { readName } from "../../../app/_people/read-name";
import { readPresence } from "../../../shared/presence";

describe("a name as typed", () => {
  it("loses its outer and doubled spaces", () => {
    expect(readName("  Mona   Lind ")).toBe("Mona Lind");
  });

  it("is asked for again when it is only spaces", () => {
    expect(readName("   ")).toBeNull();
    expect(readName("")).toBeNull();
  });

  it("is cut to what presence carries", () => {
    const name = readName("n".repeat(60));
    const presence = { name, hue: 0, panel: null, view: null, pointer: null };
    expect(readPresence(presence)?.name).toBe("n".repeat(40));
  });
});

describe("a link's address", () => {
  it("keeps the secret behind the #, out of every request", () => {
    const address = new URL(linkAddress("https://board.example", "AbCdEfGhIjKl", "s-_3"));
    expect(address.pathname).toBe("/sheet/AbCdEfGhIjKl");
    expect(address.hash).toBe("#s-_3");
    expect(address.search).toBe("");
  });
});
