import { describe, expect, it } from "vitest";
import { SvgSurface, svgText } from "../../../lib/export";

const body = (surface: SvgSurface) =>
  surface
    .toSvg("t")
    .replace(/^[\s\S]*<\/title>\n/, "")
    .replace("</svg>\n", "");

describe("the SVG writer", () => {
  it("works moves and scales into the numbers, and undoes them", () => {
    const surface = new SvgSurface(100, 50);
    surface.save();
    surface.translate(10, 20);
    surface.scale(2, 2);
    surface.translate(-1, 0);
    surface.beginPath();
    surface.moveTo(1, 1);
    surface.lineTo(2, 1.03);
    surface.lineWidth = 3;
    surface.stroke();
    surface.restore();
    surface.beginPath();
    surface.moveTo(1, 1);
    surface.quadraticCurveTo(2, 2, 3, 3);
    surface.closePath();
    surface.fillStyle = "#123456";
    surface.fill();
    expect(body(surface)).toBe(
      '<path d="M10,22L12,22.1" fill="none" stroke="#000000" stroke-width="6"/>\n' +
        '<path d="M1,1Q2,2 3,3Z" fill="#123456"/>\n',
    );
  });

  it("brings the pen back with the place", () => {
    const surface = new SvgSurface(10, 10);
    surface.fillStyle = "#111111";
    surface.globalAlpha = 0.5;
    surface.save();
    surface.fillStyle = "#222222";
    surface.globalAlpha = 1;
    surface.setLineDash([1, 2]);
    surface.restore();
    surface.beginPath();
    surface.moveTo(0, 0);
    surface.lineTo(1, 1);
    surface.fill();
    surface.stroke();
    expect(body(surface)).toContain('fill="#111111" opacity="0.5"');
    expect(body(surface)).not.toContain("dasharray");
  });

  it("clips what follows until restored, and closes what it opened", () => {
    const surface = new SvgSurface(10, 10);
    surface.save();
    surface.beginPath();
    surface.moveTo(0, 0);
    surface.lineTo(1, 0);
    surface.clip();
    surface.fill();
    surface.restore();
    surface.fill();
    expect(body(surface)).toBe(
      '<clipPath id="clip1"><path d="M0,0L1,0"/></clipPath><g clip-path="url(#clip1)">' +
        '<path d="M0,0L1,0" fill="#000000"/>\n</g><path d="M0,0L1,0" fill="#000000"/>\n',
    );
  });

  it("keeps text as text, escaped", () => {
    const surface = new SvgSurface(10, 10);
    surface.font = '700 12px "Some Family", sans-serif';
    surface.textAlign = "center";
    surface.fillText("a < b & \"c\" > 'd'", 5, 6);
    expect(body(surface)).toBe(
      '<text x="5" y="6" font-family="Some Family" font-size="12" font-weight="700"' +
        ' text-anchor="middle" fill="#000000">a &lt; b &amp; &quot;c&quot; &gt; &#39;d&#39;</text>\n',
    );
  });

  it("escapes what stands in attributes and in the title", () => {
    const surface = new SvgSurface(10, 10);
    surface.fillStyle = '"/><script>';
    surface.beginPath();
    surface.moveTo(0, 0);
    surface.fill();
    const svg = surface.toSvg("<script>\u0000");
    expect(svg).not.toContain("<script>");
    expect(svg).toContain("<title>&lt;script&gt; </title>");
  });

  it("refuses a place that is none, rather than writing NaN into a file", () => {
    const surface = new SvgSurface(10, 10);
    expect(() => surface.moveTo(Number.NaN, 0)).toThrow(/needs finite places, got NaN/);
  });

  it("refuses a font it cannot read and a colour that is none", () => {
    const surface = new SvgSurface(10, 10);
    surface.font = "bold large";
    expect(() => surface.fillText("a", 0, 0)).toThrow(/needs a font like .* got bold large/);
    surface.beginPath();
    surface.moveTo(0, 0);
    surface.fillStyle = {};
    expect(() => surface.fill()).toThrow(/needs a colour, got an object/);
  });
});

describe("text in an SVG file", () => {
  it("drops what XML 1.0 cannot hold: control letters and halves of pairs", () => {
    expect(svgText("a\u0000b\u0008c\u001fd\ud800e\ufffff\u0085g")).toBe("a b c d e f g");
  });

  it("keeps every other letter, pairs included", () => {
    expect(svgText("Ž 歩 \u{1F463} — ½")).toBe("Ž 歩 \u{1F463} — ½");
  });
});
