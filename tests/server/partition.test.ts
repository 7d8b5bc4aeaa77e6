import { afterAll, describe, expect, it } from "vitest";
import { dice } from "../support/dice";
import { temporaryFolder } from "../support/hub-under-test";
import { partition, TROUBLES } from "../support/partition-proof";

const HEALED_MS = 3000;
const seed = Number(process.env.SEED ?? Date.now() % 1e6);

describe("a network that fails between a page and the hub", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it(`is made up for soon, loses nothing, and is never called saved while it is not (SEED=${seed})`, async () => {
    const order = { folder: folder.path, troubles: TROUBLES, lastsMs: 1000, roll: dice(seed) };
    const { drawn, slowestMs, saidSaved, faults } = await partition(order);
    expect(faults).toEqual([]);
    expect(slowestMs).toBeLessThan(HEALED_MS);
    expect(drawn).toBeGreaterThan(40);
    expect(saidSaved).toBeGreaterThan(TROUBLES.length);
  });
});
