import { describe, expect, it } from "vitest";
import { layOutPages, PALETTE, pageSvg } from "../../../lib/export";
import type { Sheet } from "../../../lib/sheet";
import { contrast, laidOver } from "./contrast";
import { drawnSheet, slipped, sunk } from "./drawn-sheet";
import { wishFor } from "./printed";
import { partlyKept } from "./sheet-dice";

/** What is only laid under: sheet, papers, washes, and lines that nobody has to see. */
const UNDER: ReadonlySet<string> = new Set<string>([
  PALETTE.page,
  PALETTE.paper,
  PALETTE.paperEdge,
  PALETTE.rule,
  PALETTE.band,
  PALETTE.raspberryWash,
]);
/** What ink and signs lie on, darkest last. */
const GROUNDS = [PALETTE.page, PALETTE.paper] as const;

const sheet: Sheet = drawnSheet(9, {
  head: { firstFrame: 101 },
  change: (panel, index) => {
    const toRedraw = { side: index === 5, front: false };
    if (panel.pose === "passing" && panel.weightOn === "right") {
      return { ...slipped(panel, "right", 60), toRedraw };
    }
    return { ...(index === 2 ? sunk(panel, 40) : panel), toRedraw };
  },
});

function file(): string {
  const wish = { ...wishFor(sheet), review: partlyKept(sheet, "so it is meant") };
  return layOutPages(wish)
    .map((page) => pageSvg(page, wish))
    .join();
}

interface Paint {
  readonly colour: string;
  readonly opacity: number;
}

function paints(svg: string, element: RegExp, attribute: "fill" | "stroke"): readonly Paint[] {
  return [...svg.matchAll(element)].flatMap(([tag]) => {
    const colour = new RegExp(` ${attribute}="(#[0-9a-f]{6})"`).exec(tag)?.[1];
    const opacity = Number(/ opacity="([\d.]+)"/.exec(tag)?.[1] ?? 1);
    return colour === undefined ? [] : [{ colour, opacity }];
  });
}

function worst({ colour, opacity }: Paint): number {
  return Math.min(...GROUNDS.map((ground) => contrast(laidOver(colour, ground, opacity), ground)));
}

describe("a print that is copied in grey", () => {
  it("keeps every text at 4.5 : 1", () => {
    const texts = paints(file(), /<text [^>]*>/g, "fill");
    expect(texts.length).toBeGreaterThan(80);
    for (const text of texts) {
      // Counts stand white in a filled triangle; the figures on chips are the palette's test.
      if (text.colour === PALETTE.page) {
        expect(contrast(PALETTE.page, PALETTE.raspberry)).toBeGreaterThanOrEqual(4.5);
      } else {
        expect(worst(text)).toBeGreaterThanOrEqual(4.5);
      }
    }
  });

  it("keeps every sign, line and mark at 3 : 1", () => {
    const svg = file();
    const drawn = [
      ...paints(svg, /<path [^>]*>/g, "fill"),
      ...paints(svg, /<path [^>]*>/g, "stroke"),
    ];
    const signs = drawn.filter(({ colour }) => !UNDER.has(colour));
    expect(new Set(signs.map(({ colour }) => colour)).size).toBeGreaterThan(5);
    const faint = signs.filter((sign) => worst(sign) < 3);
    expect(faint).toEqual([]);
  });

  it("tells left from right and levels from each other by shape, with all colours taken out", () => {
    const grey = file().replaceAll(/#[0-9a-f]{6}/g, (colour) =>
      UNDER.has(colour) ? "white" : "ink",
    );
    const shapes = (words: string) => shapeBefore(grey, words);
    const told = ["left", "right", "will show", "may show", "on purpose"].map(shapes);
    expect(new Set(told).size).toBe(told.length);
    expect(shapes("left limbs")).not.toEqual(shapes("right limbs"));
    const feet = ["foot on its heel", "flat", "on its toe"].map(shapes);
    expect(new Set(feet).size).toBe(feet.length);
  });
});

/** How the legend's sample before its words is drawn, wherever it stands. */
function shapeBefore(svg: string, words: string): string {
  const upTo = svg.slice(0, svg.lastIndexOf(`>${words}</text>`));
  const own = upTo.slice(0, upTo.lastIndexOf("<text")).split("</text>").at(-1) ?? "";
  const [, x = "0", y = "0"] = /d="M([-\d.]+),([-\d.]+)/.exec(own) ?? [];
  return own.replaceAll(/([-\d.]+),([-\d.]+)/g, (_, px: string, py: string) =>
    [Number(px) - Number(x), Number(py) - Number(y)].map((place) => place.toFixed(0)).join(),
  );
}
