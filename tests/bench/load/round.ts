import type { Target } from "./targets";

/** What one measurement found, by name; NaN where there is nothing to find. */
export type Figures = Readonly<Record<string, number>>;

/** Everything that was measured one after another, by scenario and server. */
export type Round = ReadonlyMap<string, ReadonlyMap<Target, Figures>>;

export function figureOf(round: Round, scenario: string, target: Target, name: string): number {
  return round.get(scenario)?.get(target)?.[name] ?? Number.NaN;
}

/** Of those that are numbers. */
export function median(of: readonly number[]): number {
  const known = of.filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
  return known[known.length >> 1] ?? Number.NaN;
}
