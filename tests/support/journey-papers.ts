import type { Locator, Page } from "@playwright/test";
import type { View } from "../../lib/geometry";
import type { ScreenPoint } from "./pen";

/** A point of a view, panel units (720 × 1200, y down). */
export interface PaperPoint {
  readonly x: number;
  readonly y: number;
}

/** A part of a view, panel units. */
export interface PaperPart {
  readonly top: number;
  readonly bottom: number;
}

const WHOLE: PaperPart = { top: 0, bottom: 1200 };
const UNITS_ACROSS = 720;

/** One view of the panel at a frame, on the strip or at the drawing desk. */
export function paperAt(page: Page, frame: number, view: View = "side"): Locator {
  return page.getByRole("figure", { name: new RegExp(`, frame ${frame}, ${view} view$`) });
}

/** The label over the panel at a frame: pressed it takes the panel in hand, Enter draws it large. */
export function labelOf(page: Page, frame: number): Locator {
  const panel = page.getByRole("article", { name: new RegExp(`^frame ${frame},`) });
  return panel.getByRole("button", { name: /^(stand|lead-in|contact|down|passing|up|breakdown)/ });
}

/** Where points of a paper are on screen just now. */
export async function onScreen(
  paper: Locator,
  points: readonly PaperPoint[],
): Promise<ScreenPoint[]> {
  const box = await paper.boundingBox();
  if (box === null) throw new Error("this paper is not on screen");
  const scale = box.width / UNITS_ACROSS;
  return points.map(({ x, y }) => ({ x: box.x + x * scale, y: box.y + y * scale }));
}

/** A line across a paper at a height, panel units: a stroke's way of 25 points. */
export function across(y: number, from = 120, to = 600): PaperPoint[] {
  const points = 25;
  return Array.from({ length: points }, (_, n) => ({
    x: from + ((to - from) * n) / (points - 1),
    y: y + 24 * Math.sin(n / 2),
  }));
}

/**
 * Pixels that carry ink on a paper, kept ink and ink under a pen alike; what shows through from
 * neighbouring panels is not counted.
 */
export async function inkOn(paper: Locator, { top, bottom } = WHOLE): Promise<number> {
  const parts = await layersOf(paper, top / 1200, bottom / 1200);
  return parts.kept + parts.live;
}

/** Pixels under pens on a paper: strokes that are not on the sheet yet. */
export async function liveInkOn(paper: Locator, { top, bottom } = WHOLE): Promise<number> {
  return (await layersOf(paper, top / 1200, bottom / 1200)).live;
}

function layersOf(paper: Locator, from: number, to: number) {
  return paper.locator("canvas").evaluateAll(
    (canvases, [start, end]) => {
      const [kept, live] = canvases.slice(-2).map((element) => {
        const canvas = element as HTMLCanvasElement;
        const first = Math.floor(start * canvas.height);
        const rows = Math.max(1, Math.ceil(end * canvas.height) - first);
        const pixels = canvas.getContext("2d")?.getImageData(0, first, canvas.width, rows).data;
        return pixels?.filter((value, index) => index % 4 === 3 && value > 24).length ?? 0;
      });
      return { kept: kept ?? 0, live: live ?? 0 };
    },
    [from, to] as const,
  );
}
