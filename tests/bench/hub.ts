import { burst } from "./load/burst";
import { CONFIGS, passed } from "./load/config";
import { syncMs } from "./load/disk";
import { join } from "./load/join";
import { judge } from "./load/judge";
import { paced } from "./load/paced";
import type { Figures, Round } from "./load/round";
import { slow } from "./load/slow";
import { type Row, tableOf } from "./load/table";
import { ensureTargets, type Served, serve, TARGETS, type Target } from "./load/targets";

const ROUNDS = 3;
const PACED_SECONDS = 6;
const BURST_SECONDS = 5;
const WARM_SECONDS = 2;
const REST_MS = 3000; // in which what warming up has left behind is done

const WARM_CONFIG = { name: "warm", clients: 2, rooms: 1, activePerRoom: 2 };

/** What is measured, in this order. */
const SCENARIOS: Readonly<Record<string, (server: Served) => Promise<Figures>>> = {
  ...Object.fromEntries(
    CONFIGS.flatMap((config) => [
      [`${config.name} paced`, warmed((server) => paced(server, config, PACED_SECONDS))],
      [`${config.name} burst`, warmed((server) => burst(server, config, BURST_SECONDS))],
    ]),
  ),
  join,
  slow,
};

/**
 * The hub beside a bare relay, which passes frames on unread, and beside y-websocket's server in
 * memory, which stores nothing and asks nobody who he is: one after another in every round, each in a
 * process of its own and fresh for each measurement.
 *
 * Ratios mean something on any machine; milliseconds on a quiet one alone, and they hold our own event
 * loop, too, which is why the relay is there. What the disk alone takes is measured before every round.
 */
export async function benchHub(): Promise<Row[]> {
  await ensureTargets();
  const rounds: Round[] = [];
  const syncs: number[] = [];
  for (let round = 1; round <= ROUNDS; round++) {
    syncs.push(await syncMs());
    rounds.push(await measureRound(round));
  }
  const floor = {
    what: "disk: a page written and synced, p50 ms",
    figure: syncs.map((ms) => ms.toFixed(2)).join(" "),
  };
  return [floor, ...tableOf(rounds), ...judge(rounds)];
}

/** A server that people draw on has run for a while: none is measured while it still compiles its code. */
function warmed(measure: (server: Served) => Promise<Figures>) {
  return async (server: Served) => {
    const elsewhere = { ...server, place: (room: string) => server.place(`warm-${room}`) };
    await burst(elsewhere, WARM_CONFIG, WARM_SECONDS);
    await passed(REST_MS);
    return measure(server);
  };
}

/** Scenario by scenario, so that each server is measured next to the others. */
async function measureRound(number: number): Promise<Round> {
  const round = new Map<string, Map<Target, Figures>>();
  for (const [scenario, measure] of Object.entries(SCENARIOS)) {
    const measured = new Map<Target, Figures>();
    for (const target of TARGETS) {
      const server = await serve(target);
      try {
        measured.set(target, await measure(server));
      } finally {
        await server.stop();
      }
      console.error(`${number} ${scenario} ${target}: ${JSON.stringify(measured.get(target))}`);
    }
    round.set(scenario, measured);
  }
  return round;
}
