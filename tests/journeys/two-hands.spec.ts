import type { Page } from "@playwright/test";
import { dice } from "../support/dice";
import { expect, ownBoard, test } from "../support/journey";
import { DEEDS, deal } from "../support/journey-deeds";
import { allSaved, exportSheet, makeLink, openBrindle, settled } from "../support/journey-sheet";

const board = ownBoard();
const TURNS = 25;

const given = Number(process.env.SEED);
const SEED = Number.isInteger(given) && given > 0 ? given : 2511;

test(`two people do things at once and end with the same sheet (SEED=${SEED})`, async ({
  newcomer,
}) => {
  test.setTimeout(6 * 60_000); // fifty deeds by hand
  const ana = await newcomer();
  await openBrindle(ana, board.url);
  const address = await makeLink(ana, "draw");
  const ben = await newcomer();
  await ben.goto(address);
  await settled(ben);

  const throws = dice(SEED);
  const done = new Map<string, number>();
  for (let turn = 0; turn < TURNS; turn += 1) {
    // The dice are thrown before hands move: whoever is quicker, the throws stay the same.
    const both = [ana, ben].map((page) => ({ page, ...deal(throws) }));
    const outcomes = await Promise.all(both.map(({ page, deed }) => deed(page)));
    both.forEach(({ name }, at) => {
      if (outcomes[at]) done.set(name, (done.get(name) ?? 0) + 1);
    });
  }

  for (const page of [ana, ben]) await allSaved(page);
  const sheetOf = async (page: Page) => (await exportSheet(page)).file;
  await expect.poll(async () => isEqual(await sheetOf(ana), await sheetOf(ben))).toBe(true);
  expect(await sheetOf(ana)).toEqual(await sheetOf(ben));
  for (const page of [ana, ben]) await page.reload();
  for (const page of [ana, ben]) await allSaved(page);
  expect(await sheetOf(ana)).toEqual(await sheetOf(ben));

  // A deed that finds its panel gone is no deed; most have to have been done.
  const count = [...done.values()].reduce((sum, some) => sum + some, 0);
  expect(count, JSON.stringify([...done])).toBeGreaterThan(TURNS);
  expect(done.size, JSON.stringify([...done])).toBeGreaterThan(DEEDS.length / 2);
});

const isEqual = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);
