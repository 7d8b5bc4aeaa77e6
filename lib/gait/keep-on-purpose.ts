import { gathered } from "../gathered";
import { clearlyBeyond } from "./beyond";
import type { Reading, Remark } from "./finding";
import { covers, farthest, farthestBySide, type OnPurpose, type ScopeKind } from "./on-purpose";

/** A remark that is kept, and what keeps it. */
export interface Kept {
  readonly remark: Remark;
  readonly entry: OnPurpose;
}

/** What became of a reading since it was kept; `elsewhere`: it is made on a side where it was not then. */
export type Change = "reversed" | "halved" | "doubled" | "elsewhere";

/** Kept once, and no longer what was kept: its remarks are told again. */
export interface Lapsed {
  readonly entry: OnPurpose;
  readonly change: Change;
  readonly now: Reading;
  readonly remarks: readonly Remark[];
}

export interface Sorted {
  readonly open: readonly Remark[];
  readonly kept: readonly Kept[];
  readonly lapsed: readonly Lapsed[];
  /** Entries in whose scope nothing is remarked any more: kept in case it comes back. */
  readonly settled: readonly OnPurpose[];
}

const NARROWEST_FIRST: readonly ScopeKind[] = ["panel", "side", "walk"];

/**
 * Tells the remarks that are kept on purpose from those that are open. Where several entries speak of one
 * remark the narrowest holds it. An entry lapses when the farthest reading in its scope has reversed,
 * halved or doubled since, by more than its own ±; and one for the whole walk, too, when that happened
 * to one side's, or a side that was sound has a remark.
 *
 * Shapes:  remarks in any order; those answered keep it
 * Source:  halves and doubles are our own choice: a change that anyone sees
 */
export function keepOnPurpose(remarks: readonly Remark[], onPurpose: readonly OnPurpose[]): Sorted {
  const lapsed = gathered(onPurpose, (entry): Lapsed[] => {
    const within = remarks.filter((remark) => covers(entry, remark));
    const now = farthest(within);
    const change =
      now === null ? null : (changeOf(entry.measured, now) ?? changeOfSides(entry, within));
    return now === null || change === null ? [] : [{ entry, change, now, remarks: within }];
  });
  const holding = onPurpose
    .filter((entry) => lapsed.every((one) => one.entry !== entry))
    .toSorted(narrowestFirst);
  const kept = gathered(remarks, (remark): Kept[] => {
    const entry = holding.find((one) => covers(one, remark));
    return entry === undefined ? [] : [{ remark, entry }];
  });
  const held = new Set(kept.map(({ remark }) => remark));
  const settled = onPurpose.filter((entry) => !remarks.some((remark) => covers(entry, remark)));
  return { open: remarks.filter((remark) => !held.has(remark)), kept, lapsed, settled };
}

/** What became of the first side that is no longer as it was. Entries from before know no sides. */
function changeOfSides({ sides, measured }: OnPurpose, within: readonly Remark[]): Change | null {
  if (sides === undefined) return null;
  for (const { side, value } of farthestBySide(within)) {
    const then = sides.find((one) => one.side === side);
    if (then === undefined) return "elsewhere";
    const now = within.filter((remark) => remark.side === side).map((remark) => remark.measured);
    const reading = now.find((one) => one.value === value);
    const change =
      reading === undefined ? null : changeOf({ ...measured, value: then.value }, reading);
    if (change !== null) return change;
  }
  return null;
}

function narrowestFirst(a: OnPurpose, b: OnPurpose): number {
  const width = ({ scope }: OnPurpose) => NARROWEST_FIRST.indexOf(scope.kind);
  return width(a) - width(b) || (a.id < b.id ? -1 : 1);
}

function changeOf(then: Reading, now: Reading): Change | null {
  const size = Math.abs(now.value);
  const was = Math.abs(then.value);
  const hasTurned = then.value * now.value < 0 && clearlyBeyond(size, now.plusMinus, 0);
  if (hasTurned) return "reversed";
  if (clearlyBeyond(size, now.plusMinus, 2 * was)) return "doubled";
  return clearlyBeyond(was / 2, now.plusMinus, size) ? "halved" : null;
}
