import { describe, expect, it } from "vitest";
import { embedFonts } from "../../../lib/export";

const SVG = '<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1">\n<title>t</title></svg>';

describe("embedding the family", () => {
  it("puts every weight right behind the opening tag, and keeps the rest", () => {
    const svg = embedFonts(SVG, [
      { weight: 400, base64: "AAEA" },
      { weight: 700, base64: "AAEB" },
    ]);
    expect(svg).toMatch(/^<svg [^>]*>\n<defs><style>@font-face\{.*\}<\/style><\/defs>\n<title>t/);
    expect(svg).toContain('font-weight:700;src:url("data:font/ttf;base64,AAEB")');
    expect(svg.replace(/\n<defs>.*<\/defs>/, "")).toBe(SVG);
  });

  it("refuses what is no SVG file, and fonts that are not base64", () => {
    expect(() => embedFonts("<html>", [])).toThrow(/needs an SVG file/);
    expect(() => embedFonts(SVG, [{ weight: 400, base64: '"}</style>' }])).toThrow(/needs base64/);
  });
});
