import { CONFIGS } from "./config";
import { figureOf, median, type Round } from "./round";
import type { Row } from "./table";

/** Sources of all targets: the hub's design, measured. */
const MS_P50 = 2; // beyond the relay's
const MS_P95 = 6;
const CPU_BURST = 1.3; // of the server in memory
const CPU_PACED = 1.5;
const BYTES_DOWN = 1.01; // of the relay's
const SAVED_BYTES = 2; // an update
const RSS = 1.5; // of the server in memory
const JOIN_WARM = 1.3; // of the relay's
const JOIN_COLD_MS = 250;
const JOIN_BYTES = 1.01; // of the document's
const STORM_CPU = 0.15; // seconds
const SLOW_MIB = 20;
const STROKES = 7200;

type Of = (name: string, scenario: string) => (round: Round) => number;
const hub: Of = (name, scenario) => (round) => figureOf(round, scenario, "hub", name);
const relay: Of = (name, scenario) => (round) => figureOf(round, scenario, "relay", name);
const inMemory: Of = (name, scenario) => (round) => figureOf(round, scenario, "memory", name);

/** What was asked of the hub, and whether it held in the median of the rounds. */
export function judge(rounds: readonly Round[]): Row[] {
  const over = (value: (round: Round) => number) => median(rounds.map(value));
  const row = (what: string, found: number, most: number, digits = 2): Row => ({
    what: `target: ${what}`,
    figure: `${found <= most ? "met" : "MISSED"}: ${found.toFixed(digits)}, at most ${most}`,
  });
  const ratio = (a: (round: Round) => number, b: (round: Round) => number) =>
    over((round) => a(round) / b(round));
  const rows = CONFIGS.flatMap(({ name }) => {
    const paced = `${name} paced`;
    const burst = `${name} burst`;
    const beyond = (figure: string) =>
      over((round) => hub(figure, paced)(round) - relay(figure, paced)(round));
    const of = (figure: string, scenario: string, anchor: Of) =>
      ratio(hub(figure, scenario), anchor(figure, scenario));
    return [
      row(`${name} p50 beyond the relay's, ms`, beyond("p50"), MS_P50),
      row(`${name} p95 beyond the relay's, ms`, beyond("p95"), MS_P95),
      row(`${name} CPU paced, of in memory`, of("cpu", paced, inMemory), CPU_PACED),
      row(`${name} CPU burst, of in memory`, of("cpuPer10k", burst, inMemory), CPU_BURST),
      row(`${name} bytes down, of the relay`, of("downPerUpdate", burst, relay), BYTES_DOWN, 3),
      row(`${name} bytes of SAVED an update`, over(hub("savedPerUpdate", burst)), SAVED_BYTES),
      row(`${name} RSS paced, of in memory`, of("rss", paced, inMemory), RSS),
      row(`${name} missing`, lost(rounds, [paced, burst]), 0, 0),
    ];
  });
  return [
    ...rows,
    row(
      "join warm, of the relay",
      ratio(hub("warmMs", "join"), relay("warmMs", "join")),
      JOIN_WARM,
    ),
    row("join bytes, of the document", over(hub("bytesOverState", "join")), JOIN_BYTES, 3),
    row("join after a restart, ms", over(hub("coldMs", "join")), JOIN_COLD_MS, 0),
    row("strokes that lack at synced", STROKES - over(hub("strokesAtSynced", "join")), 0, 0),
    row("fifty joins at once, CPU s", over(hub("stormCpu", "join")), STORM_CPU),
    row("growth for a reader that stands still, MiB", over(hub("growth", "slow")), SLOW_MIB, 0),
  ];
}

function lost(rounds: readonly Round[], scenarios: readonly string[]): number {
  const all = rounds.flatMap((round) => scenarios.map((one) => hub("lost", one)(round)));
  return all.reduce((sum, one) => sum + one, 0);
}
