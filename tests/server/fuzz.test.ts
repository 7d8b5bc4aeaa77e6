import { afterAll, describe, expect, it } from "vitest";
import { proveFuzz } from "../support/hostile/fuzz-proof";
import { COSTLY, KINDS } from "../support/hostile/hostile-kinds";
import { temporaryFolder } from "../support/hub-under-test";

const FRAMES = Number(process.env.FRAMES ?? 3000);
const seed = Number(process.env.SEED ?? Date.now() % 1e6);

describe("strangers who send what no page would send", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it(`disturb nobody, and each frame gets what it is due (SEED=${seed})`, async () => {
    const order = { folder: folder.path, frames: FRAMES, seed, breakers: 3 };
    const proof = await proveFuzz(order);
    expect(proof.faults).toEqual([]);
    expect(proof.frames).toBe(FRAMES);
    // Every kind had its turns; the costly ones come by chance.
    expect(Object.keys(proof.kinds)).toEqual(expect.arrayContaining(Object.keys(KINDS)));
    expect(Object.keys(proof.kinds).some((kind) => kind in COSTLY)).toBe(true);
    expect(proof.logged).toBeLessThan(64 * 1024);
    expect(proof.strikes).toEqual({ sent: 9, aside: 9, devices: 3 });
  });
});
