import type { Page } from "@playwright/test";
import reference from "../reference/captured-stride.json" with { type: "json" };
import { expect, ownBoard, test } from "../support/journey";
import { exportSheet, framesOf, openCaptured, settled, titleOf } from "../support/journey-sheet";

const board = ownBoard();

test("the captured walk opens, and by the yardstick life nothing will show", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await openCaptured(page, board.url);
  expect(await framesOf(page)).toEqual(reference.panels.map(({ frame }) => frame));
  const margin = page.getByRole("complementary", { name: "Margin" });
  // The trade wants its poses evenly timed, which this person's are not: so the board has read it.
  const ofTheTrade = margin.getByRole("heading", { name: /Left step is unevenly timed/ });
  await margin.getByRole("radio", { name: "trade" }).check();
  await expect(ofTheTrade).toBeVisible();

  await margin.getByRole("radio", { name: "life" }).check();
  await expect(margin).toContainText("How people walk: measured on 72 captured walks");
  await expect(ofTheTrade).toHaveCount(0);
  await expect(margin.getByText(/will show/)).toHaveCount(0);
  await expect(page.getByRole("button", { name: /will show at/ })).toHaveCount(0);
});

test("the captured walk says whose it is", async ({ newcomer }) => {
  const page = await newcomer();
  await openCaptured(page, board.url);
  await titleOf(page).click();
  const dialog = page.getByRole("dialog", { name: "About this sheet" });
  const credit = "The data used in this project was obtained from mocap.cs.cmu.edu.";
  expect(reference.source).toContain(credit);
  await expect(dialog).toContainText(credit);
});

const choose = (page: Page, name: string, text: string) =>
  page.getByLabel("Sheet file to open").setInputFiles({
    name,
    mimeType: "application/json",
    buffer: Buffer.from(text),
  });

test("a sheet file that was exported becomes a new sheet with the same walk", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await openCaptured(page, board.url);
  const first = page.url();
  const exported = await exportSheet(page);
  expect(
    exported.file.panels.flatMap(({ marks }) => Object.keys(marks.side)).length,
  ).toBeGreaterThan(9 * 8);

  const other = await newcomer();
  await other.goto(board.url);
  await choose(other, "walk.heelstrip.json", exported.text);
  await settled(other);
  expect(other.url()).not.toBe(first);
  const { file } = await exportSheet(other);
  expect(file.head).toEqual(exported.file.head);
  expect(withoutIds(file.panels)).toEqual(withoutIds(exported.file.panels));
});

const withoutIds = <T extends { id: string }>(panels: readonly T[]) =>
  panels.map(({ id, ...panel }) => panel);

test("a file that is no whole sheet gets one clear line and changes nothing", async ({
  newcomer,
}) => {
  const page = await newcomer({ mayComplain: /status of 4\d\d/ });
  await openCaptured(page, board.url);
  const { text, file } = await exportSheet(page);
  await page.goto(board.url);
  const opened = page.getByRole("region", { name: "Sheets this browser has opened" });
  await expect(opened.getByRole("listitem")).toHaveCount(1);

  const damaged: Readonly<Record<string, readonly [text: string, line: RegExp]>> = {
    "truncated.json": [text.slice(0, text.length / 2), /JSON/],
    "foreign.json": ['{"nodes": []}', /expected format "heelstrip-sheet"/],
    "newer.json": [JSON.stringify({ ...file, version: 99 }), /expected version 1, got 99/],
    "damaged.json": [
      JSON.stringify({ ...file, panels: [{ ...file.panels[0], frame: "first" }] }),
      /panels\[0\]\.frame/,
    ],
    "empty.json": ["", /JSON/],
  };
  for (const [name, [content, line]] of Object.entries(damaged)) {
    await test.step(name, async () => {
      await choose(page, name, content);
      const said = page.getByRole("alert").filter({ hasText: "That did not work" });
      await expect(said).toContainText(line);
      expect((await said.textContent())?.trim()).not.toContain("\n");
      await expect(page.getByRole("button", { name: "Choose a file" })).toBeEnabled();
      expect(new URL(page.url()).pathname).toBe("/");
      await expect(opened.getByRole("listitem")).toHaveCount(1);
    });
  }
  // And a whole one still opens.
  await choose(page, "whole.json", text);
  await settled(page);
  expect(await framesOf(page)).toEqual(reference.panels.map(({ frame }) => frame));
});
