import type { Page } from "@playwright/test";
import { expect, ownBoard, test } from "../support/journey";
import { across, inkOn, liveInkOn, onScreen, paperAt } from "../support/journey-papers";
import {
  allSaved,
  exportSheet,
  makeLink,
  nameOneself,
  settled,
  startWalk,
} from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

const HIGH = { top: 200, bottom: 400 }; // where the owner draws
const LOW = { top: 700, bottom: 900 }; // where the guest draws

/** An owner, and a guest who came by the draw link that the owner made. */
async function ownerAndGuest(newcomer: () => Promise<Page>, title: string) {
  const owner = await newcomer();
  await startWalk(owner, board.url, title);
  const address = await makeLink(owner, "draw");
  const guest = await newcomer();
  await guest.goto(address);
  await settled(guest);
  return { owner, guest };
}

test("two people draw at once and each takes back only their own", async ({ newcomer }) => {
  const { owner, guest } = await ownerAndGuest(newcomer, "Drawn by two");
  const [here, there] = [paperAt(owner, 4), paperAt(guest, 4)];
  const [ownersPen, guestsPen] = [await takePen(owner), await takePen(guest)];

  await test.step("each sees the other's stroke while it is under the pen", async () => {
    const ownersWay = await onScreen(here, across(300));
    const guestsWay = await onScreen(there, across(800));
    const half = 13;
    for (const [pen, way] of [
      [ownersPen, ownersWay],
      [guestsPen, guestsWay],
    ] as const) {
      const [first] = way;
      if (first !== undefined) await pen.down(first);
    }
    await Promise.all([
      ownersPen.move(ownersWay.slice(1, half)),
      guestsPen.move(guestsWay.slice(1, half)),
    ]);
    await expect.poll(() => liveInkOn(there, HIGH)).toBeGreaterThan(10);
    await expect.poll(() => liveInkOn(here, LOW)).toBeGreaterThan(10);
    await Promise.all([
      ownersPen.move(ownersWay.slice(half)),
      guestsPen.move(guestsWay.slice(half)),
    ]);
    await Promise.all([ownersPen.up(), guestsPen.up()]);
    await Promise.all([allSaved(owner), allSaved(guest)]);
  });

  const strokes = async (page: Page) => {
    const { file } = await exportSheet(page);
    return file.panels.flatMap(({ ink }) => ink.side);
  };
  await test.step("both end with the same ink", async () => {
    await expect.poll(async () => (await strokes(guest)).length).toBe(2);
    expect(await strokes(owner)).toEqual(await strokes(guest));
    for (const paper of [here, there]) {
      await expect.poll(() => liveInkOn(paper)).toBe(0);
      expect(await inkOn(paper, HIGH)).toBeGreaterThan(20);
      expect(await inkOn(paper, LOW)).toBeGreaterThan(20);
    }
  });

  const drawn = async () => [
    (await inkOn(here, HIGH)) > 0,
    (await inkOn(here, LOW)) > 0,
    (await inkOn(there, HIGH)) > 0,
    (await inkOn(there, LOW)) > 0,
  ];
  await test.step("undo and redo are each person's own", async () => {
    await owner.keyboard.press("Control+z");
    await expect.poll(drawn).toEqual([false, true, false, true]);
    await owner.keyboard.press("Control+z"); // nothing of the owner's is left to take back
    await guest.getByRole("button", { name: "Undo" }).click();
    await expect.poll(drawn).toEqual([false, false, false, false]);
    await guest.getByRole("button", { name: "Redo" }).click();
    await expect.poll(drawn).toEqual([false, true, false, true]);
    await owner.keyboard.press("Control+Shift+Z");
    await expect.poll(drawn).toEqual([true, true, true, true]);
    await Promise.all([allSaved(owner), allSaved(guest)]);
    expect(await strokes(owner)).toEqual(await strokes(guest));
  });
});

test("each sees the other's name and pencil, until the other leaves", async ({ newcomer }) => {
  const { owner, guest } = await ownerAndGuest(newcomer, "Who is here");
  await nameOneself(owner, "Ottilie");
  await nameOneself(guest, "Gus");
  const people = (page: Page) => page.getByRole("region", { name: "People on this sheet" });
  await expect(people(owner).getByRole("listitem")).toHaveText("Gus");
  await expect(people(guest).getByRole("listitem")).toHaveText("Ottilie");

  const point = { x: 360, y: 600 };
  const [overPaper] = await onScreen(paperAt(owner, 7), [point]);
  if (overPaper === undefined) throw new Error("the paper is not on screen");
  await owner.mouse.move(overPaper.x, overPaper.y);
  const pencil = paperAt(guest, 7).locator("[data-pencil]");
  await expect(pencil).toBeVisible();
  await expect(paperAt(owner, 7).locator("[data-pencil]")).toHaveCount(0);
  // The tip, at the pencil's lower left, is where the other points.
  const [tip] = await onScreen(paperAt(guest, 7), [point]);
  const shown = async () => {
    const box = await pencil.boundingBox();
    if (box === null || tip === undefined) return Number.NaN;
    return Math.hypot(box.x - tip.x, box.y + box.height - tip.y);
  };
  await expect.poll(shown).toBeLessThan(3);

  await guest.close();
  await expect(people(owner).getByRole("listitem")).toHaveCount(0);
});

test("two people without a name are told apart, by number and by hue", async ({ newcomer }) => {
  const { owner, guest } = await ownerAndGuest(newcomer, "Nameless");
  const people = (page: Page) => page.getByRole("region", { name: "People on this sheet" });
  const self = async (page: Page) => {
    const chip = page.getByRole("button", { name: /^You are here as Someone \d\./ });
    return /Someone \d/.exec((await chip.getAttribute("aria-label")) ?? "")?.[0] ?? "";
  };
  const hueOf = (page: Page) => page.evaluate(() => localStorage.getItem("heelstrip.me"));
  const [one, other] = [await self(owner), await self(guest)];
  expect([one, other].toSorted()).toEqual(["Someone 1", "Someone 2"]);
  await expect(people(owner).getByRole("listitem")).toHaveText([other]);
  await expect(people(guest).getByRole("listitem")).toHaveText([one]);
  expect(await hueOf(owner)).not.toBe(await hueOf(guest));

  await nameOneself(guest, "Gus");
  await expect(people(owner).getByRole("listitem")).toHaveText(["Gus"]);
  await expect(owner.getByRole("button", { name: /^You are here as Someone\./ })).toBeVisible();
});
