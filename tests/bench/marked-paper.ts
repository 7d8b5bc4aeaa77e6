import type { Page } from "@playwright/test";
import { type JointName, PANEL } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import type { ScreenPoint } from "../support/pen";

/** The paper in hand as a person sees it: where it is, what is marked, what is asked for. */
export interface MarkedPaper {
  readonly frame: number;
  readonly left: number;
  readonly top: number;
  /** CSS pixels. */
  readonly width: number;
  /** Panel units. */
  readonly marks: Readonly<Partial<Record<JointName, Point>>>;
  readonly guess: { readonly joint: JointName; readonly at: Point } | null;
}

export async function readPaper(page: Page): Promise<MarkedPaper> {
  const seen = await page.evaluate(() => {
    const paper = document.querySelector('[data-desk] figure[data-in-hand="true"]');
    if (paper === null) throw new Error("no paper is in hand at the desk");
    const { left, top, width } = paper.getBoundingClientRect();
    const handles = [...paper.querySelectorAll<HTMLElement>("[data-joint]")];
    const guess = paper.querySelector<HTMLElement>("[data-guess]");
    return {
      ...{ left, top, width, label: paper.getAttribute("aria-label") ?? "" },
      marks: handles.map(({ dataset, style }) => [dataset.joint, style.left, style.top] as const),
      guess:
        guess === null ? null : ([guess.dataset.guess, guess.style.left, guess.style.top] as const),
    };
  });
  const { left, top, width, label } = seen;
  return {
    ...{ left, top, width, frame: Number(/frame (\d+)/.exec(label)?.[1]) },
    marks: Object.fromEntries(seen.marks.map(([joint, ...place]) => [joint, inUnits(place)])),
    guess:
      seen.guess === null
        ? null
        : { joint: seen.guess[0] as JointName, at: inUnits([seen.guess[1], seen.guess[2]]) },
  };
}

/** A handle's style says where it is in percent of the paper. */
function inUnits([across, down]: readonly [string, string]): Point {
  return {
    x: (Number.parseFloat(across) / 100) * PANEL.width,
    y: (Number.parseFloat(down) / 100) * PANEL.height,
  };
}

/** CSS pixels a panel unit. */
export function scaleOf({ width }: MarkedPaper): number {
  return width / PANEL.width;
}

export function onScreen(paper: MarkedPaper, { x, y }: Point): ScreenPoint {
  return { x: paper.left + x * scaleOf(paper), y: paper.top + y * scaleOf(paper) };
}
