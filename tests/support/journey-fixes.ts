import { expect, type Locator, type Page } from "@playwright/test";
import type { CheckId, Walk } from "../../lib/gait";
import { defaultBrief, emptyPanel, layOut, sheetFileText } from "../../lib/sheet";
import { ids } from "./peers";
import { strokeOf } from "./strokes";
import { lift, push, raise, retime, shift, walk, without, withPanel } from "./walk";

const HIPS = ["left-hip", "right-hip"] as const;
const LEFT_FOOT = ["left-ankle", "left-heel", "left-ball", "left-toe"] as const;

/** A walk with one fault, for each check that knows a fix. */
export const FAULTY: Readonly<Partial<Record<CheckId, () => Walk>>> = {
  "hip-order": () => raise(walk(), "left down", 0.06),
  slide: () => push(walk(), "left passing", LEFT_FOOT, 0.09),
  gaps: () => retime(walk(), "left passing", 21),
  "missing-pose": () => without(walk(), "left passing"),
  "pose-order": () =>
    withPanel(withPanel(walk(), "left passing", { pose: "up" }), "left up", { pose: "passing" }),
  "weight-side": () => push(walk(), "left passing", HIPS, -0.14),
  "weight-front": () => shift(walk(), "left passing", HIPS, 0.08),
  float: () => lift(walk(), "left passing", LEFT_FOOT, 0.05),
  sink: () => lift(walk(), "left passing", LEFT_FOOT, -0.05),
};

/** A sheet file of a walk, with a stroke on every paper, so that there is ink to redraw. */
export function drawnFile(drawn: Walk): string {
  const { head } = layOut(defaultBrief, ids());
  const newId = ids(21);
  const panels = drawn.panels.map(({ id, marks, ...panel }) => {
    const own = id.replace(" ", "-");
    const stroke = (view: "side" | "front") => ({
      ...strokeOf(
        [
          [100, 100, 1],
          [500, 120, 1],
        ],
        { panel: own, view },
      ),
      id: newId(),
    });
    return {
      ...emptyPanel({ ...panel, id: own }),
      marks,
      ink: { side: [stroke("side")], front: [stroke("front")] },
    };
  });
  const { framesPerSecond, advance, build, kind } = drawn;
  const last = Math.max(...panels.map(({ frame }) => frame));
  const loop = { from: 13, to: last };
  const stepLength = advance * 12;
  return sheetFileText({
    head: { ...head, framesPerSecond, advance, build, kind, loop, stepLength },
    panels,
  });
}

/** Makes a sheet from a file at the board's own door, and answers with its owner's address. */
export async function sheetFrom(page: Page, url: string, file: string): Promise<string> {
  const response = await page.request.post(`${url}/api/sheets`, {
    headers: { origin: url },
    data: { from: "file", file },
  });
  expect(response.status(), await response.text()).toBe(201);
  const { sheet, links } = (await response.json()) as {
    sheet: string;
    links: { owner: string };
  };
  return `${url}/sheet/${sheet}#${links.owner}`;
}

export const margin = (page: Page): Locator => page.getByRole("complementary", { name: "Margin" });

/** The card of a remark in the margin, by its title. */
export const cardOf = (page: Page, title: string | RegExp): Locator =>
  margin(page)
    .getByRole("article")
    .filter({ has: page.getByRole("heading", { name: title }) })
    .filter({ has: page.getByRole("button", { name: /^Show where/ }) });

/** What stands under the strip while a fix is looked at. */
export const fixBar = (page: Page): Locator =>
  page.getByRole("region", { name: "A fix, shown before it is done" });
