import { afterAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../support/hub-under-test";
import { proveModel } from "../support/model/model-proof";

const SCHEDULES = Number(process.env.SCHEDULES ?? 2000);
const seed = Number(process.env.SEED ?? Date.now() % 1e6);

/**
 * The hub, its rooms, its committer and a real SQLite file, as they run; the sockets are of memory, and
 * the database is called in this thread and not in a worker. So that a schedule decides in which order
 * things happen, and thousands of them take a minute and not an hour. Real sockets, real processes and
 * the worker have their own proofs beside this one.
 */
describe("whatever happens, and in whatever order", () => {
  const folder = temporaryFolder();
  afterAll(folder.remove);

  it(`all pages and the database are equal at rest, and nothing was called saved before it was (SEED=${seed})`, async () => {
    const order = { folder: folder.path, schedules: SCHEDULES, longest: 16, seed };
    const proof = await proveModel(order);
    expect(proof.fault).toBeNull();
    expect(proof.committed).toBeGreaterThan(SCHEDULES); // or it would have proven little
  }, 600_000);
});
