import type { CheckId } from "../../../lib/gait";
import type { Fault } from "../seeding";
import { fixed } from "./fixing";
import { outcomeOf, type Seeding, seedingsOf } from "./seeding";

/** How far a fault is put beyond what its threshold passes, as multiples of it. */
export const TIMES = [0.5, 1, 1.5, 2] as const;

/** ± of a mark placed by pencil, a share of a leg: the best that a hand or a figure is taken to do. */
export const PENCIL = 0.005;

/** What came of all throws of a fault at one size. */
export interface Tally {
  readonly throws: number;
  readonly named: number;
  /** Throws in which another check speaks up without reason. */
  readonly alarmed: number;
  /** Those remarks, said short, each once. */
  readonly alarms: readonly string[];
}

export function tallyOf(seedings: readonly Seeding[], times: number): Tally {
  const outcomes = seedings.map((seeding) => ({ seeding, ...outcomeOf(seeding, times) }));
  const alarms = outcomes.flatMap(({ seeding, alarms: told }) =>
    told.map(
      ({ check, level, panels }) =>
        `${check} ${level} at ${panels.join(", ")} on ${seeding.base.name} by ${seeding.yardstick}`,
    ),
  );
  return {
    throws: outcomes.length,
    named: outcomes.filter(({ named }) => named !== null).length,
    alarmed: outcomes.filter(({ alarms: told }) => told.length > 0).length,
    alarms: [...new Set(alarms)],
  };
}

/** What became of the fixes that were offered for a fault at twice its threshold. */
export interface FixTally {
  readonly named: number;
  readonly offered: number;
  readonly failed: readonly string[];
}

export function fixTallyOf(seedings: readonly Seeding[]): FixTally {
  const outcomes = seedings.flatMap((seeding) => {
    const outcome = outcomeOf(seeding, 2);
    return outcome.named === null ? [] : [{ seeding, ...fixed(outcome, seeding) }];
  });
  const failed = outcomes
    .filter(({ offered, stays, shows }) => offered && (stays || shows.length > 0))
    .map(({ seeding, stays, shows }) => {
      const what = stays ? "stays" : shows.map(({ title }) => title).join(", ");
      return `${seeding.fault.name} on ${seeding.base.name}, ${seeding.side}: ${what}`;
    });
  return {
    named: outcomes.length,
    offered: outcomes.filter(({ offered }) => offered).length,
    failed,
  };
}

/** Everything that is measured of a fault. */
export interface FaultRow {
  readonly fault: Fault;
  readonly exact: readonly Tally[];
  readonly pencil: readonly Tally[];
  /** The greatest ± of marks, a share of a leg, at which twice the threshold is named in 95 %; null: only exact ones. */
  readonly toldUpTo: number | null;
  /** Twice the threshold, by a pencil or by a hand as fine as the fault asks for. */
  readonly finest: Tally;
  readonly fixes: FixTally;
}

const ENOUGH = 0.95;
const PRECISIONS = [0.03, 0.02, 0.015, 0.01, 0.0075, 0.005, 0.004, 0.0025, 0.001];
const SCANNED = 40; // throws at each of them
const MENDED = 60; // throws by each hand that are mended: every walk, side and yardstick is among them

export function measuredRow(fault: Fault, throws: number): FaultRow {
  const [exact, pencil] = [0, PENCIL].map((precision) => seedingsOf(fault, throws, precision));
  if (exact === undefined || pencil === undefined) throw new Error("two hands are measured");
  const toldUpTo = (fault.whole === true ? [] : PRECISIONS).find((precision) => {
    const { named, throws: all } = tallyOf(seedingsOf(fault, SCANNED, precision), 2);
    return named >= ENOUGH * all;
  });
  return {
    fault,
    exact: TIMES.map((times) => tallyOf(exact, times)),
    pencil: TIMES.map((times) => tallyOf(pencil, times)),
    toldUpTo: fault.whole === true ? null : (toldUpTo ?? null),
    finest: tallyOf(seedingsOf(fault, throws, fault.finest ?? PENCIL), 2),
    fixes: fixTallyOf([...exact.slice(0, MENDED), ...pencil.slice(0, MENDED)]),
  };
}

/** The checks that faults are put in for. */
export function checksOf(faults: readonly Fault[]): readonly CheckId[] {
  return [...new Set(faults.map(({ check }) => check))];
}
