import { join } from "node:path";
import fc from "fast-check";
import { sql } from "kysely";
import { connectSqlite } from "../../../server/store/sqlite";
import { openSqliteStore } from "../../../server/store/sqlite-store";
import { openWorld, settled } from "./model-world";
import { comeToRest, faultsAtRest } from "./rest";
import { schedules } from "./schedules";

export interface ModelOrder {
  readonly folder: string;
  readonly schedules: number;
  /** Steps of the longest one. */
  readonly longest: number;
  readonly seed: number;
}

export interface ModelProof {
  readonly steps: number;
  /** Updates that were committed, over all schedules. */
  readonly committed: number;
  /** The shortest schedule that goes wrong, and how; null if none does. */
  readonly fault: string | null;
}

/** Three pages, a hub and a database, through many schedules of what may happen to them. */
export async function proveModel(order: ModelOrder): Promise<ModelProof> {
  const connection = connectSqlite(join(order.folder, "heelstrip.db"));
  // A power cut is not among what happens here, and waiting for the disk is all that most of the time would go into.
  await sql`pragma synchronous = off`.execute(connection.db);
  const store = await openSqliteStore(connection);
  let [steps, committed] = [0, 0];
  const result = await fc.check(
    fc.asyncProperty(schedules(order.longest), async (schedule) => {
      const world = await openWorld(store);
      try {
        for (const page of world.pages) await world.join(page);
        for (const step of schedule) {
          await step.run(world);
          await settled();
          steps++;
        }
        await comeToRest(world);
        const faults = await faultsAtRest(world);
        committed += world.committed.getMap("strokes").size;
        if (faults.length > 0) {
          throw new Error([...schedule.map(({ said }) => said), ...faults].join("\n"));
        }
      } finally {
        world.stop();
      }
    }),
    { numRuns: order.schedules, seed: order.seed },
  );
  await store.close();
  const { failed, errorInstance, counterexamplePath } = result;
  const said = errorInstance instanceof Error ? (errorInstance.stack ?? "") : String(errorInstance);
  const fault = failed ? `SEED=${order.seed} path ${counterexamplePath}\n${said}` : null;
  return { steps, committed, fault };
}
