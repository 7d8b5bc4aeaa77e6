import { chromium } from "@playwright/test";
import { describe, expect, it } from "vitest";
import { CHROMIUM_FLAGS } from "../../scripts/house/chromium.mjs";

/** The features that a command line turns off: of a switch given twice, the browser takes the last. */
const offIn = (said: string): string[] =>
  [...said.matchAll(/--disable-features=(\S+)/g)].at(-1)?.[1]?.split(",") ?? [];

/** What Playwright says when a program is no browser holds the whole command line. */
async function commandLine(args: readonly string[]): Promise<string> {
  const launched = chromium.launch({ executablePath: "/bin/false", args: [...args] });
  return launched.then(
    () => "a browser started",
    (error: Error) => error.message,
  );
}

describe("the browser of the journeys", () => {
  it("has all off that Playwright turns off, and more", async () => {
    const theirs = offIn(await commandLine([]));
    expect(theirs.length).toBeGreaterThan(5);
    const ours = offIn(await commandLine(CHROMIUM_FLAGS));
    expect(ours).toEqual(expect.arrayContaining(theirs));
    expect(ours).toContain("WebUIOmniboxAimPopup");
  });
});
