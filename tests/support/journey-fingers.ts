import type { Page } from "@playwright/test";
import type { ScreenPoint } from "./pen";

/** Puts one finger for each way on the screen, moves them along together, and lifts them. */
export async function moveFingers(
  page: Page,
  ways: readonly (readonly ScreenPoint[])[],
): Promise<void> {
  const browser = await page.context().newCDPSession(page);
  const steps = Math.max(...ways.map((way) => way.length));
  const fingersAt = (step: number) =>
    ways.flatMap((way, id) => {
      const point = way[Math.min(step, way.length - 1)];
      return point === undefined ? [] : [{ ...point, id, force: 0.5 }];
    });
  // One after the other comes down, as fingers do.
  for (const down of ways.keys()) {
    await browser.send("Input.dispatchTouchEvent", {
      type: "touchStart",
      touchPoints: fingersAt(0).slice(0, down + 1),
    });
  }
  for (let step = 1; step < steps; step += 1) {
    await browser.send("Input.dispatchTouchEvent", {
      type: "touchMove",
      touchPoints: fingersAt(step),
    });
  }
  await browser.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
}
