import { join } from "node:path";
import type { Page } from "@playwright/test";
import Database from "libsql";
import type { Role } from "../../shared/role";
import { REFUSAL } from "../support/console-words";
import {
  drawEverywhere,
  pressEveryButton,
  pressEveryKey,
  programOf,
} from "../support/everything-tried";
import { createSheet } from "../support/hub-under-test";
import { expect, ownBoard, test } from "../support/journey";
import { allSaved, stateLine } from "../support/journey-sheet";

const board = ownBoard();

const NO_LINK = "AAAAAAAAAAAA";

/** Opens a fresh copy of the demo, which has something of everything, by the link of a role. */
async function comeInBy(page: Page, role: Role) {
  const { sheet, links } = await createSheet(board.url, { from: "example", example: "brindle" });
  await page.goto(`${board.url}/sheet/${sheet}#${links[role]}`);
  await expect(stateLine(page)).toHaveText(/^(all ink saved|view only|critique: )/);
  const later = page.getByRole("button", { name: "Later" });
  if (await later.isVisible()) await later.click();
  await expect(page.locator("#margin")).toContainText("Left foot slips"); // its remarks' buttons are tried too
  return { sheet, links, program: await programOf(page, board.url, sheet) };
}

/** How many updates the hub's database has of each document. */
function headsOf(sheet: string): Record<string, number> {
  const db = new Database(join(board.dataDir, "heelstrip.db"), { readonly: true });
  const rows = db.prepare("select name, head from documents where sheet_id = ?").all([sheet]);
  db.close();
  return Object.fromEntries(
    (rows as { name: string; head: number }[]).map((row) => [row.name, row.head]),
  );
}

/** The doors that are the owner's alone, with what each would do. */
const OWNERS_DOORS = [
  ["GET", "/links"],
  ["GET", "/audit"],
  ["POST", "/links", { role: "owner" }],
  ["PATCH", `/links/${NO_LINK}`, { role: "owner" }],
  ["DELETE", `/links/${NO_LINK}`],
] as const;

async function expectNoOwnersDoor(program: Awaited<ReturnType<typeof programOf>>): Promise<void> {
  for (const [method, path, body] of OWNERS_DOORS) {
    expect(await program.door(method, path, body), `${method} ${path}`).toBe(403);
  }
}

const DRAWS =
  /^(Draw|Rub out|Mark joints|Gather|fine pencil|broad pencil|Even out|Retime|Remove it|Do it)\b/;

/** Nothing to draw or invite with is there; every paper, key and button that is there is tried. */
async function tryEverythingOnPage(page: Page): Promise<void> {
  await expect(page.getByRole("button", { name: DRAWS })).toHaveCount(0);
  await expect(page.getByRole("button", { name: "Invite" })).toHaveCount(0);
  await drawEverywhere(page, 1);
  await pressEveryKey(page, 1);
  const pressed = await pressEveryButton(page);
  expect(pressed.length).toBeGreaterThan(10);
}

test("whoever looks changes nothing, by hand, by keyboard, by program or by door", async ({
  newcomer,
}) => {
  const page = await newcomer({ mayComplain: REFUSAL });
  const { sheet, program } = await comeInBy(page, "view");
  const before = headsOf(sheet);
  await expect(page.getByRole("navigation", { name: "Tray" })).toContainText(
    "You are here to look: this link does not draw.",
  );
  await tryEverythingOnPage(page);
  expect(await program.write("drawing")).toMatchObject({ code: "role" });
  expect(await program.write("critique")).toMatchObject({ code: "role" });
  expect(await program.door("POST", "/pictures", "no picture")).toBe(403);
  await expectNoOwnersDoor(program);
  await expect(stateLine(page)).toHaveText("view only");
  expect(headsOf(sheet)).toEqual(before);
});

test("whoever is here for critique changes no drawing, whatever they try", async ({ newcomer }) => {
  const page = await newcomer({ mayComplain: REFUSAL });
  const { sheet, program } = await comeInBy(page, "critique");
  const before = headsOf(sheet);
  await tryEverythingOnPage(page);
  expect(await program.write("drawing")).toMatchObject({ code: "role" });
  expect(await program.write("critique")).toBeNull(); // this they may
  expect(await program.door("POST", "/pictures", "no picture")).toBe(403);
  await expectNoOwnersDoor(program);
  await expect(stateLine(page)).toHaveText("critique: looks, does not draw");
  expect(headsOf(sheet).drawing).toBe(before.drawing);
});

test("whoever draws has no say over links", async ({ newcomer }) => {
  const page = await newcomer({ mayComplain: REFUSAL });
  const { sheet, program } = await comeInBy(page, "draw");
  await expect(page.getByRole("button", { name: "Invite" })).toHaveCount(0);
  const pressed = await pressEveryButton(page);
  expect(pressed.filter((name) => /invite|revoke|link/i.test(name))).toEqual([]);
  await expectNoOwnersDoor(program);
  expect(await program.write("drawing")).toBeNull();
  expect(await program.write("critique")).toBeNull();
  expect(await program.door("GET", "")).toBe(200);
  const strange = await createSheet(board.url); // a right to one sheet is none to another
  const there = await programOf(page, board.url, strange.sheet);
  expect(await there.door("GET", "")).toBe(404);
  await expect(there.write("drawing")).rejects.toThrow("status 404");
  expect(Object.keys(headsOf(sheet))).toHaveLength(2);
});

test("an owner can leave no sheet without one, and write nothing that is no sheet's", async ({
  newcomer,
}) => {
  const page = await newcomer({ mayComplain: REFUSAL });
  const { program } = await comeInBy(page, "owner");
  await allSaved(page);
  await page.getByRole("button", { name: "Invite" }).click();
  const dialog = page.getByRole("dialog", { name: "Invite to this sheet" });
  const mine = dialog.getByRole("listitem").filter({ hasText: /^owner/ });
  await mine.getByRole("button", { name: /^Revoke/ }).click();
  await mine.getByRole("button", { name: "Revoke it" }).click();
  await expect(dialog.getByRole("alert").first()).toContainText("That did not go through:");
  await mine.getByRole("button", { name: "Keep it" }).click();
  await mine.getByRole("combobox").selectOption("view");
  await expect(dialog.getByRole("alert").first()).toContainText("That did not go through:");
  await expect(mine.getByRole("combobox")).toHaveValue("owner");
  const own = (await program.links()).find(({ role }) => role === "owner")?.link;
  expect(await program.door("DELETE", `/links/${own}`)).toBe(409);
  expect(await program.door("PATCH", `/links/${own}`, { role: "draw" })).toBe(409);
  expect(await program.door("PATCH", `/links/${own}`, { expiresAt: Date.now() + 1e6 })).toBe(409);
  expect(await program.door("POST", "/links", { role: "king" })).toBe(422);
  expect(await program.door("DELETE", "")).toBe(405); // there is no door that takes a sheet away
  const links = await program.links();
  expect(
    links.filter(({ role, revokedAt }) => role === "owner" && revokedAt === null),
  ).toHaveLength(1);
});
