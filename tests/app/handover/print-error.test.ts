import { describe, expect, it } from "vitest";
import {
  PrintError,
  wasStopped,
  whyNoFile,
  whyNoPreview,
} from "../../../app/_handover/print-error";

describe("why no file was made", () => {
  it("says what failed, and that the sheet is untouched", () => {
    expect(whyNoFile(new PrintError("font", "the font answered 503"))).toMatch(
      /typeface could not be fetched.*untouched/,
    );
    expect(whyNoFile(new PrintError("size", "no canvas"))).toMatch(/larger than this browser/);
  });

  it("says of a preview only that it could not be drawn", () => {
    const why = whyNoPreview(new PrintError("picture", "the browser did not decode the SVG"));
    expect(why).toMatch(/preview could not be drawn/);
    expect(why).not.toMatch(/file was made/);
  });

  it("does not guess at what it does not know", () => {
    expect(whyNoFile(new TypeError("x is undefined"))).toMatch(/something unforeseen/);
  });

  it("tells a stop by hand from a failure", () => {
    const stop = new AbortController();
    stop.abort();
    expect(wasStopped(stop.signal.reason)).toBe(true);
    expect(wasStopped(new PrintError("font", "gone"))).toBe(false);
  });
});
