import { readFile } from "node:fs/promises";
import { type Download, expect, type Locator, type Page } from "@playwright/test";
import type { SheetFile } from "../../lib/sheet";

/** Starts a walk from the brief as it stands, under a title. */
export async function startWalk(page: Page, url: string, title: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel("Name of the walk").fill(title);
  await page.getByRole("button", { name: "Lay out the strip" }).click();
  await expect(page.getByRole("heading", { name: title })).toBeVisible();
  await settled(page);
}

/** Opens a copy of the captured walk. */
export async function openCaptured(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByRole("button", { name: "Open the captured walk" }).click();
  await settled(page);
}

/** Opens a copy of the demo. */
export async function openBrindle(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByRole("button", { name: "Open the demo" }).click();
  await settled(page);
}

/** The first greeting is answered, and the state line says that nothing waits to be saved. */
export async function settled(page: Page): Promise<void> {
  await allSaved(page);
  const later = page.getByRole("button", { name: "Later" });
  if (await later.isVisible()) await later.click();
}

/** The button in the head band that says whether the ink is saved. */
export function stateLine(page: Page): Locator {
  return page.getByRole("banner").locator("button[data-state]");
}

/** What it says of ink that the hub does not have yet, and this browser keeps. */
export const KEPT = "offline, kept on this machine";

/**
 * Listens to the board's voice from here on, as a screen reader does: what was said is heard although
 * the next is said at once. Answers with all that has been heard so far.
 */
export async function listen(page: Page): Promise<() => Promise<string[]>> {
  const heard = await page.locator("[data-spoken]").evaluateHandle((voice) => {
    const said: string[] = [];
    new MutationObserver(() => said.push(voice.textContent ?? "")).observe(voice, {
      ...{ childList: true, characterData: true, subtree: true },
    });
    return said;
  });
  return () => heard.jsonValue();
}

/** Also right after a page was asked for, whose code a busy machine takes half a minute to read in. */
export async function allSaved(page: Page): Promise<void> {
  await expect(stateLine(page)).toHaveText("all ink saved", { timeout: 60_000 });
}

/** Gives oneself a name, by way of the chip in the head band. */
export async function nameOneself(page: Page, name: string): Promise<void> {
  await page.getByRole("button", { name: /^You are here as / }).click();
  const dialog = page.getByRole("dialog", { name: "Your name and hue" });
  await dialog.getByLabel("Name", { exact: true }).fill(name);
  await dialog.getByRole("button", { name: "Keep" }).click();
  await expect(dialog).toBeHidden();
}

/** Makes a link in the invite dialog, as the owner does, and answers with its address. */
export async function makeLink(
  page: Page,
  role: "draw" | "critique" | "view",
  forWhom = "",
): Promise<string> {
  await page.getByRole("button", { name: "Invite" }).click();
  const dialog = page.getByRole("dialog", { name: "Invite to this sheet" });
  await dialog.getByRole("radio", { name: new RegExp(`^${role}`) }).check();
  await dialog.getByLabel("For whom").fill(forWhom);
  await dialog.getByRole("button", { name: "Make a link" }).click();
  const address = await dialog.getByLabel(`The new ${role} link`).inputValue();
  await dialog.getByRole("button", { name: "Close" }).click();
  await expect(dialog).toBeHidden();
  return address;
}

/** The sheet's own file, downloaded as a person does it. */
export async function exportSheet(page: Page): Promise<{ text: string; file: SheetFile }> {
  await titleOf(page).click();
  const dialog = page.getByRole("dialog", { name: "About this sheet" });
  const begun = page.waitForEvent("download");
  await dialog.getByRole("button", { name: "Download the sheet file" }).click();
  const text = (await contentOf(await begun)).toString("utf8");
  await dialog.getByRole("button", { name: "Close" }).click();
  await expect(dialog).toBeHidden();
  return { text, file: JSON.parse(text) as SheetFile };
}

/** The walk's title in the head band, which opens the page about the sheet. */
export function titleOf(page: Page): Locator {
  return page.getByRole("banner").getByRole("heading", { level: 1 }).getByRole("button");
}

export async function contentOf(download: Download): Promise<Buffer> {
  return readFile(await download.path());
}

/** The frames on the ruler, from left to right. */
export async function framesOf(page: Page): Promise<number[]> {
  const feet = page.getByRole("slider", { name: /^Frame of / });
  return feet.evaluateAll((all) =>
    all
      .toSorted((a, b) => a.getBoundingClientRect().x - b.getBoundingClientRect().x)
      .map((foot) => Number(foot.getAttribute("aria-valuenow"))),
  );
}
