import type { Page } from "@playwright/test";

export interface SeenFocus {
  readonly name: string;
  /** 1..21; 0 where there is no line at all, null while the page itself has the focus. */
  readonly contrast: number | null;
}

/**
 * What has the focus, and how well the line around it is told from what lies behind the line: the
 * background that the page paints there, looked up through everything that is transparent.
 *
 * Source:  WCAG 2.2, definitions of contrast ratio and relative luminance
 */
export function focusOf(page: Page): Promise<SeenFocus> {
  return page.evaluate(() => {
    const mix = onePixel();
    const element = document.activeElement;
    if (element === null || element === document.body) return { name: "the page", contrast: null };
    const label = element.closest("label");
    const drawn = [element, ...element.children, ...(label === null ? [] : [label])];
    const said = element.getAttribute("aria-label") ?? element.textContent ?? "";
    const name = `${element.tagName.toLowerCase()} ${said.trim().slice(0, 40)}`;
    return { name, contrast: Math.max(...drawn.map(contrastOfLine)) };

    function contrastOfLine(part: Element): number {
      const { outlineStyle, outlineWidth, outlineColor, outlineOffset } = getComputedStyle(part);
      if (outlineStyle === "none" || !(Number.parseFloat(outlineWidth) > 0)) return 0;
      const within = Number.parseFloat(outlineOffset) < 0;
      const behind = behindOf(within ? part : part.parentElement);
      const one = luminance(over(rgbaOf(outlineColor), behind));
      const other = luminance(behind);
      return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    /** The colours of an element and its forebears, laid one over the other. */
    function behindOf(from: Element | null): number[] {
      const layers: number[][] = [];
      for (let at = from; at !== null; at = at.parentElement) {
        const colour = rgbaOf(getComputedStyle(at).backgroundColor);
        layers.push(colour);
        if (colour[3] === 1) break;
      }
      return layers.reduceRight((below, above) => over(above, below), [255, 255, 255, 1]);
    }

    function over(above: number[], below: number[]): number[] {
      const share = above[3] ?? 1;
      return [0, 1, 2].map((at) => share * (above[at] ?? 0) + (1 - share) * (below[at] ?? 0));
    }

    /** To mix colours on: what is put there takes the place of what was. */
    function onePixel(): OffscreenCanvasRenderingContext2D {
      const context = new OffscreenCanvas(1, 1).getContext("2d", { willReadFrequently: true });
      if (context === null) throw new Error("no canvas to mix a colour on");
      context.globalCompositeOperation = "copy";
      return context;
    }

    /** Any colour that CSS can write, as red, green, blue 0..255 and alpha 0..1. */
    function rgbaOf(colour: string): number[] {
      mix.fillStyle = colour;
      mix.fillRect(0, 0, 1, 1);
      const [red = 0, green = 0, blue = 0, alpha = 0] = mix.getImageData(0, 0, 1, 1).data;
      return [red, green, blue, alpha / 255];
    }

    function luminance(colour: number[]): number {
      const [red = 0, green = 0, blue = 0] = colour.map((value) => {
        const share = value / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    }
  });
}
