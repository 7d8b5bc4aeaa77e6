import { afterEach, describe, expect, it, vi } from "vitest";
import { comeIn } from "../../../app/_door/come-in";

describe("coming in by a link", () => {
  afterEach(() => vi.unstubAllGlobals());

  /** A browser at a link, and a hub that answers every door with this status. */
  function atLink(status: number) {
    const replaceState = vi.fn();
    vi.stubGlobal("location", { hash: "#a-secret" });
    vi.stubGlobal("history", { state: null, replaceState });
    vi.stubGlobal("fetch", async () => Response.json({ code: "c", message: "m" }, { status }));
    return replaceState;
  }

  it.each([429, 500, 503])("takes %i for silence, and keeps the link's secret", async (status) => {
    const replaceState = atLink(status);
    expect(await comeIn("AAAAAAAAAAAA")).toEqual({ kind: "unreachable" });
    expect(replaceState).not.toHaveBeenCalled();
  });

  it("takes the secret of a link that opens nothing out of the address", async () => {
    const replaceState = atLink(404);
    expect(await comeIn("AAAAAAAAAAAA")).toEqual({ kind: "bad-link" });
    expect(replaceState).toHaveBeenCalledOnce();
  });
});
