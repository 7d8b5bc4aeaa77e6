import { afterAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/hub-under-test";
import { cutPower } from "../../support/power-cuts";

const CUTS = 20; // hundreds in the long proof
const seed = Number(process.env.SEED ?? Date.now() % 1e6);

describe("a power cut", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it(`leaves a file that opens and has all that was acknowledged (SEED=${seed})`, async () => {
    const { faults, acknowledged, lostBytes } = await cutPower(folder.path, CUTS, seed);
    expect(faults).toEqual([]);
    expect(acknowledged).toBeGreaterThan(CUTS * 20);
    expect(lostBytes).toBeGreaterThan(0); // something was there to lose
  });
});
