import type { Page } from "@playwright/test";
import { Resvg } from "@resvg/resvg-js";
import { brindleExample, newPanelId, toSheetFile } from "../../lib/sheet";
import { dice } from "../support/dice";
import { openPage } from "../support/hub-client";
import { ask, createSheet, enter } from "../support/hub-under-test";
import { expect, ownBoard, test } from "../support/journey";
import { download, pngHead, readSvg } from "../support/journey-print";
import { allSaved } from "../support/journey-sheet";

const board = ownBoard();

/** Each would do something, where words are taken for more than words. */
const HOSTILE = {
  title: '</title></text><script>hit=1</script><img src=x onerror="hit=2">',
  shot: '"><svg onload=hit=3>',
  credit: "]]><!--{{hit=4}}<a href='javascript:hit=5'>",
  reason: "</script><style>*{display:none}</style><iframe src=/>",
  name: "<img src=x onerror=hit=6>",
  label: "'><button onclick=hit=7>Revoke</button>",
};

/** A sheet that says them wherever a sheet has words of its own. */
function hostileSheet() {
  const { bytes } = dice(5);
  const example = brindleExample(() => newPanelId(bytes));
  const { title, shot, credit, reason, name } = HOSTILE;
  return toSheetFile({
    ...example,
    head: { ...example.head, title, shot, credit },
    onPurpose: (example.onPurpose ?? []).map((entry) => ({ ...entry, reason, by: name })),
  });
}

/** Whether anything on the page came alive; a breach of its policy is seen by the journey itself. */
function whatCameAlive(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const foreign = "iframe, img[src=x], script:not([nonce]):not([src]), a[href^=javascript]";
    const found = [...document.querySelectorAll(foreign)].map(({ outerHTML }) => outerHTML);
    const handlers = [...document.querySelectorAll("*")].flatMap(({ attributes }) =>
      [...attributes].filter(({ name }) => name.startsWith("on")).map(({ name }) => name),
    );
    return [...found, ...handlers, ...("hit" in window ? ["it ran"] : [])];
  });
}

test("names, notes, labels and titles are words on the page, in the SVG and in the picture", async ({
  newcomer,
}) => {
  const body = { from: "file", file: hostileSheet() };
  const { sheet, links } = await createSheet(board.url, body);
  const cookie = await enter(board.url, sheet, links.owner);
  const made = { method: "POST", cookie, body: { role: "view", label: HOSTILE.label } };
  expect((await ask(board.url, `/api/sheets/${sheet}/links`, made)).status).toBe(201);
  const other = await openPage({ url: board.url, sheet, cookie });
  other.say({ name: HOSTILE.name, hue: 50, panel: null, view: null, pointer: null }, 1);

  const page = await newcomer();
  await page.goto(`${board.url}/sheet/${sheet}#${links.owner}`);
  await allSaved(page);
  await expect(page).toHaveTitle(`${HOSTILE.title} · Heelstrip`);
  const banner = page.getByRole("banner");
  await expect(banner.getByRole("heading", { level: 1 })).toHaveText(HOSTILE.title);
  await expect(banner).toContainText(HOSTILE.shot);
  await expect(banner.getByRole("listitem")).toHaveText(HOSTILE.name);
  await page
    .getByRole("button", { name: /^Kept on purpose at / })
    .first()
    .click();
  await expect(page.locator("body")).toContainText(HOSTILE.reason);
  expect(await whatCameAlive(page)).toEqual([]);
  await page.keyboard.press("Escape");

  await page.getByRole("button", { name: "Invite" }).click();
  const invite = page.getByRole("dialog", { name: "Invite to this sheet" });
  await expect(invite.getByText(HOSTILE.label, { exact: true })).toBeVisible();
  expect(await whatCameAlive(page)).toEqual([]);
  await invite.getByRole("button", { name: "Close" }).click();

  await page.getByRole("button", { name: "Print the sheet" }).click();
  const print = page.getByRole("dialog", { name: "Print the sheet" });
  const svg = (await download(page, print, /^SVG/)).bytes.toString("utf8");
  const reader = await newcomer(); // where no policy holds back what the file might do
  const { fault, texts, fetched } = await readSvg(reader, svg);
  expect(fault).toBeNull();
  expect(fetched).toEqual([]);
  expect(texts.map(({ text }) => text).join(" ")).toContain("<script>hit=1</script>");
  expect(svg).not.toMatch(/<(script|img|iframe|foreignObject|a)\b|\son[a-z]+=["']/i);
  expect(new Resvg(svg, { font: { loadSystemFonts: false } }).render().width).toBeGreaterThan(100);
  const png = await download(page, print, /^PNG, 1920 wide/);
  expect(pngHead(png.bytes).width).toBe(1920);
  expect(png.name).toMatch(/^[^<>:"/\\|?*]+\.png$/);
  await reader.setContent(svg);
  expect(await whatCameAlive(reader)).toEqual([]);
  await other.close();
});
