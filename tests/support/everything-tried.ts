import type { Page } from "@playwright/test";
import type { LinkListed } from "../../shared/api-answers";
import type { DocumentName } from "../../shared/document-name";
import type { Refused } from "../../shared/hub-message";
import { openPage } from "./hub-client";
import { ask } from "./hub-under-test";
import { across, labelOf, onScreen, paperAt } from "./journey-papers";
import { takePen } from "./pen";

/** Every key that a board could know, with the modifiers it could know them under. */
const KEYS = [
  ..."abcdefghijklmnopqrstuvwxyz0123456789+-=?",
  ...["Delete", "Backspace", "Enter", "Space", "Tab", "ArrowLeft", "ArrowRight", "ArrowUp"],
  ...["Alt+ArrowRight", "Alt+ArrowLeft", "Shift+ArrowRight", "Control+z", "Control+y"],
  ...["Control+Shift+z", "Shift+Delete", "Control+v", "Control+x"],
];

/** Presses every key with a panel in hand, and every key again at the drawing desk. */
export async function pressEveryKey(page: Page, frame: number): Promise<void> {
  for (const desk of [false, true]) {
    await page.keyboard.press("Escape");
    if (desk) await page.keyboard.press("Escape");
    const label = labelOf(page, frame);
    if (await label.isVisible()) await label.click();
    if (desk) await page.keyboard.press("Enter");
    for (const key of KEYS) await page.keyboard.press(key);
    await leaveAll(page);
  }
}

/** Takes a pen to paper and ruler, whatever tool its key would have taken in hand before. */
export async function drawEverywhere(page: Page, frame: number): Promise<void> {
  const pen = await takePen(page);
  for (const key of ["d", "r", "m", "g"]) {
    await page.keyboard.press(key);
    await pen.draw(await onScreen(paperAt(page, frame), across(300)));
  }
  for (const foot of (await page.getByRole("slider").all()).slice(0, 6)) {
    await foot.press("ArrowRight");
    const box = await foot.boundingBox();
    if (box === null) continue;
    const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    await pen.draw([from, { ...from, x: from.x + 30 }, { ...from, x: from.x + 60 }]);
  }
  await leaveAll(page);
}

/**
 * Presses every button there is, those that appear by it too, and moves every slider and choice; nothing
 * that leads out of the board.
 *
 * @returns what was pressed, by name
 */
export async function pressEveryButton(page: Page): Promise<readonly string[]> {
  return page.evaluate(async () => {
    const pressed = new Set<string>();
    const breathe = () => new Promise((resolve) => setTimeout(resolve, 10));
    const nameOf = (element: Element) =>
      `${element.getAttribute("aria-label") ?? element.textContent ?? ""} ${element.getAttribute("title") ?? ""}`;
    const leave = () =>
      document.activeElement?.dispatchEvent(
        new KeyboardEvent("keydown", { key: "Escape", bubbles: true, cancelable: true }),
      );
    for (let round = 0; round < 3; round++) {
      for (const button of document.querySelectorAll<HTMLElement>(
        "button:not(:disabled), summary, input[type=checkbox], input[type=radio]",
      )) {
        const name = nameOf(button);
        if (!button.isConnected || pressed.has(name) || /download|print/i.test(name)) continue;
        pressed.add(name);
        button.click();
        await breathe();
        const dialog = document.querySelector("[role=dialog], dialog[open]");
        if (dialog !== null) leave();
        await breathe();
      }
    }
    return [...pressed];
  });
}

async function leaveAll(page: Page): Promise<void> {
  for (let n = 0; n < 4; n++) await page.keyboard.press("Escape");
}

/** A program with the page's own cookie, which keeps to no page's manners. */
export interface Program {
  /** Writes into a document; answers with the refusal, or null where the hub took it. */
  write(document: DocumentName): Promise<Refused | null>;
  /** One of the sheet's doors: the status that it answers with. */
  door(method: string, path: string, body?: unknown): Promise<number>;
  /** The sheet's links, as its owner sees them. */
  links(): Promise<readonly LinkListed[]>;
}

export async function programOf(page: Page, url: string, sheet: string): Promise<Program> {
  const cookies = await page.context().cookies();
  const cookie = cookies.map(({ name, value }) => `${name}=${value}`).join("; ");
  const path = `/api/sheets/${sheet}`;
  return {
    async write(document) {
      const program = await openPage({ url, sheet, document, cookie });
      program.draw("rawwrite");
      await program.until(() => program.refused.length > 0 || program.saved === program.sent);
      await program.close();
      return program.refused[0] ?? null;
    },
    async door(method, at, body) {
      return (await ask(url, `${path}${at}`, { method, cookie, body })).status;
    },
    async links() {
      const { body } = await ask(url, `${path}/links`, { cookie });
      return (body as { links: LinkListed[] }).links;
    },
  };
}
