import { expect, ownBoard, test } from "../support/journey";
import { across, onScreen, paperAt } from "../support/journey-papers";
import { download } from "../support/journey-print";
import { allSaved, startWalk } from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

test("a whole session asks its own server alone, and all it asks for is there", async ({
  newcomer,
}) => {
  const page = await newcomer();
  const asked: string[] = [];
  const missing: string[] = [];
  page.on("request", (request) => asked.push(new URL(request.url()).origin));
  page.on("response", (response) => {
    if (response.status() >= 400) missing.push(`${response.status()} ${response.url()}`);
  });
  const lines: string[] = [];
  page.on("websocket", (socket) => lines.push(new URL(socket.url()).host));

  await startWalk(page, board.url, "At home");
  const pen = await takePen(page);
  await pen.draw(await onScreen(paperAt(page, 1), across(400)));
  await allSaved(page);
  await page.getByRole("button", { name: "Print the sheet" }).click();
  const dialog = page.getByRole("dialog", { name: "Print the sheet" });
  await download(page, dialog, /^PNG, 1920 wide/);
  await dialog.getByRole("button", { name: "Close" }).click();
  await page.getByRole("button", { name: "Help" }).click();
  await page.reload();
  await allSaved(page);

  expect(asked.length).toBeGreaterThan(20);
  const inside = new Set([new URL(board.url).origin, "null"]); // null: data and blob addresses
  expect(asked.filter((origin) => !inside.has(origin))).toEqual([]);
  expect(lines.length).toBeGreaterThan(1);
  expect(new Set(lines)).toEqual(new Set([new URL(board.url).host]));
  expect(missing).toEqual([]);
});

test("pages carry an icon and a policy that lets in no foreign or inline code", async ({
  newcomer,
}) => {
  const page = await newcomer();
  const answer = await page.goto(board.url);
  const policy = answer?.headers()["content-security-policy"] ?? "";
  expect(policy).toMatch(/script-src [^;]*'nonce-[\w+/=]{16,}'/);
  expect(policy).not.toMatch(/unsafe-inline|unsafe-eval|https?:|\*/);
  const again = await page.reload();
  expect(again?.headers()["content-security-policy"]).not.toBe(policy); // a nonce is used once

  const icon = await page.locator('link[rel="icon"]').first().getAttribute("href");
  const picture = await page.request.get(new URL(icon ?? "", board.url).href);
  expect(picture.ok()).toBe(true);
  expect(picture.headers()["content-type"]).toMatch(/^image\//);
});
