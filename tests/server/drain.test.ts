import { afterAll, describe, expect, it } from "vitest";
import { drainUnderLoad, faultsOf } from "../support/drains";
import { temporaryFolder } from "../support/hub-under-test";

const DRAINS = 3;
const LOAD = { hands: 3, watchers: 24, strokes: 60 };

describe("SIGTERM while people draw and look on", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it(`ends with 0 in time, ${DRAINS} times over, loses nothing, and brings nobody back at once`, async () => {
    for (let drain = 1; drain <= DRAINS; drain++) {
      const found = await drainUnderLoad(folder.path, LOAD);
      expect(found.acknowledged).toBeGreaterThanOrEqual(LOAD.strokes);
      expect(faultsOf(found, LOAD)).toEqual([]);
    }
  });
});
