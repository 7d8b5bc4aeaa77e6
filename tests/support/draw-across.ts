import type { Page } from "@playwright/test";
import { across, onScreen, paperAt } from "./journey-papers";
import { takePen } from "./pen";

/** Draws one stroke from side to side, at this height of the panel's side view. Units: panel units. */
export async function drawAcross(page: Page, frame: number, y: number): Promise<void> {
  const pen = await takePen(page);
  await pen.draw(await onScreen(paperAt(page, frame), across(y)));
}
