import type { CheckId, Remark } from "../../../lib/gait";
import type { Fault } from "../seeding";
import { fixed } from "./fixing";
import { isTold, outcomeOf, type Seeding, seedingsOf } from "./seeding";

/** How far a fault is put beyond what its threshold passes, as multiples of it. */
export const TIMES = [0.5, 1, 1.5, 2] as const;

/** ± of a mark placed by pencil, a share of a leg: the best that a hand or a figure is taken to do. */
export const PENCIL = 0.005;

/** What came of all throws of a fault at one size. */
export interface Tally {
  readonly throws: number;
  readonly named: number;
}

/** What else is said of throws at one size. */
export interface Heard {
  readonly throws: number;
  /** Throws in which another check speaks up without reason. */
  readonly alarmed: number;
  /** Those remarks, said short, each once. */
  readonly alarms: readonly string[];
  /** Throws in which a check speaks up with the reason that the fault gives. */
  readonly brought: Readonly<Partial<Record<CheckId, number>>>;
}

/** How often the fault's own check names it. */
export function tallyOf(seedings: readonly Seeding[], times: number): Tally {
  return {
    throws: seedings.length,
    named: seedings.filter((seeding) => isTold(seeding, times)).length,
  };
}

/** What all other checks say. */
export function heardOf(seedings: readonly Seeding[], times: number): Heard {
  const outcomes = seedings.map((seeding) => ({ seeding, ...outcomeOf(seeding, times) }));
  const alarms = outcomes.flatMap(({ seeding, alarms: told }) =>
    told.map(
      ({ check, level, panels }) =>
        `${check} ${level} at ${panels.join(", ")} on ${seeding.base.name} by ${seeding.yardstick}`,
    ),
  );
  return {
    throws: outcomes.length,
    alarmed: outcomes.filter(({ alarms: told }) => told.length > 0).length,
    alarms: [...new Set(alarms)],
    brought: countsOf(outcomes.map(({ brought }) => brought)),
  };
}

/** In how many throws a check spoke. */
function countsOf(told: readonly (readonly Remark[])[]): Heard["brought"] {
  const checks = told.flatMap((remarks) => [...new Set(remarks.map(({ check }) => check))]);
  const counts: Partial<Record<CheckId, number>> = {};
  for (const check of checks) counts[check] = (counts[check] ?? 0) + 1;
  return counts;
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
export interface Measured {
  /** At each of the sizes, on exact marks and by pencil. */
  readonly exact: readonly Tally[];
  readonly pencil: readonly Tally[];
  /** At half and at twice, on exact marks and by pencil, beside what else is said. */
  readonly heard: readonly Heard[];
  /** The greatest ± of marks, a share of a leg, at which twice the threshold is named in 95 %; null: only exact ones. */
  readonly toldUpTo: number | null;
  /** Twice the threshold, by a pencil or by a hand as fine as the fault asks for. */
  readonly finest: Tally;
  readonly fixes: FixTally;
}

export interface FaultRow extends Measured {
  readonly fault: Fault;
}

const ENOUGH = 0.95;
const PRECISIONS = [0.03, 0.02, 0.015, 0.01, 0.0075, 0.005, 0.004, 0.0025, 0.001];
const SCANNED = 40; // throws at each of them
export const HEARD = 60; // of a size, by each hand: all that is said is listened to
const MENDED = 20; // throws by each hand, other ones by the second: most walks, sides and yardsticks are among them

export function measured(fault: Fault, throws: number): Measured {
  const exact = byHand(fault, throws, 0);
  const pencil = byHand(fault, throws, PENCIL);
  const toldUpTo = (fault.whole === true ? [] : PRECISIONS).find((precision) => {
    const { named, throws: all } = tallyOf(seedingsOf(fault, SCANNED, precision), 2);
    return named >= ENOUGH * all;
  });
  const { finest } = fault;
  const twice = pencil.sizes.at(-1) ?? { throws: 0, named: 0 };
  return {
    exact: exact.sizes,
    pencil: pencil.sizes,
    heard: [...exact.heard, ...pencil.heard],
    toldUpTo: toldUpTo ?? null,
    finest: finest === undefined ? twice : tallyOf(seedingsOf(fault, throws, finest), 2),
    fixes: fixTallyOf([...exact.seedings.slice(0, MENDED), ...pencil.seedings.slice(-MENDED)]),
  };
}

/** All sizes by one hand; at the first and the last of them every check is heard. */
function byHand(fault: Fault, throws: number, precision: number) {
  const seedings = seedingsOf(fault, throws, precision);
  const [half, , , twice] = TIMES;
  const few = seedings.slice(0, HEARD);
  return {
    seedings,
    heard: [half, twice].map((times) => heardOf(few, times)),
    sizes: TIMES.map((times) => tallyOf(seedings, times)),
  };
}

/** The checks that faults are put in for. */
export function checksOf(faults: readonly Fault[]): readonly CheckId[] {
  return [...new Set(faults.map(({ check }) => check))];
}
