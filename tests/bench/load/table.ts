import { figureOf, median, type Round } from "./round";
import { TARGETS, type Target } from "./targets";

export interface Row {
  readonly what: string;
  readonly figure: string;
}

interface Line {
  readonly name: string;
  readonly label: string;
  readonly digits: number;
}

const PACED: readonly Line[] = [
  { name: "p50", label: "last peer has it, p50 ms", digits: 2 },
  { name: "p95", label: "p95 ms", digits: 2 },
  { name: "cpu", label: "CPU s of it all", digits: 2 },
  { name: "rss", label: "RSS MiB", digits: 0 },
  { name: "downKiBPerSecond", label: "down, KiB/s of all", digits: 0 },
  { name: "lost", label: "missing", digits: 0 },
];
const BURST: readonly Line[] = [
  { name: "updatesPerSecond", label: "updates/s", digits: 0 },
  { name: "cpuPer10k", label: "CPU s per 10,000", digits: 2 },
  { name: "rssMost", label: "RSS at most, MiB", digits: 0 },
  { name: "downPerUpdate", label: "bytes down an update", digits: 0 },
  { name: "savedPerUpdate", label: "of it SAVED", digits: 2 },
  { name: "lost", label: "missing", digits: 0 },
];
const JOIN: readonly Line[] = [
  { name: "warmMs", label: "warm, ms", digits: 0 },
  { name: "bytesOverState", label: "bytes over the document's", digits: 3 },
  { name: "stormMs", label: "fifty at once, ms", digits: 0 },
  { name: "stormCpu", label: "fifty at once, CPU s", digits: 2 },
  { name: "stormGrowth", label: "fifty at once, RSS grows MiB", digits: 0 },
  { name: "coldMs", label: "after a restart, ms", digits: 0 },
  { name: "strokesAtSynced", label: "after a restart, strokes at synced", digits: 0 },
];
const SLOW: readonly Line[] = [
  { name: "passing", label: "38 MB pass, RSS grows MiB", digits: 0 },
  { name: "growth", label: "as many past one who stands still, it grows further", digits: 0 },
];

/** A row a figure: the median of the rounds, its ratio to the relay's of the same round, and the range. */
export function tableOf(rounds: readonly Round[]): Row[] {
  const scenarios = [...(rounds[0]?.keys() ?? [])];
  return scenarios.flatMap((scenario) =>
    linesOf(scenario).map(({ name, label, digits }) => ({
      what: `${scenario}: ${label}`,
      figure: TARGETS.map((target) => {
        const values = rounds.map((round) => figureOf(round, scenario, target, name));
        const ratios = rounds.map(
          (round, index) => (values[index] ?? 0) / figureOf(round, scenario, "relay", name),
        );
        return cell(target, values, ratios, digits);
      }).join("  "),
    })),
  );
}

function linesOf(scenario: string): readonly Line[] {
  if (scenario.endsWith("paced")) return PACED;
  if (scenario.endsWith("burst")) return BURST;
  return scenario === "join" ? JOIN : SLOW;
}

function cell(
  target: Target,
  values: readonly number[],
  ratios: readonly number[],
  digits: number,
): string {
  const known = values.filter((value) => !Number.isNaN(value));
  if (known.length === 0) return `${target} –`;
  const shown = (value: number) => value.toFixed(digits);
  const range = `[${shown(Math.min(...known))}–${shown(Math.max(...known))}]`;
  const ratio = median(ratios);
  const times = target === "relay" || !Number.isFinite(ratio) ? "" : ` ×${ratio.toFixed(2)}`;
  return `${target} ${shown(median(values))}${times} ${range}`;
}
