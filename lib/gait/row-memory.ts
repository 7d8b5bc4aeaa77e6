import { areSame } from "./memory";
import type { WalkPanel } from "./walk";

/** What was told of a row of things, each known by its key, and by what else all of them go. */
interface Row {
  readonly terms: readonly unknown[];
  readonly by: readonly unknown[];
  readonly keys: readonly unknown[];
  readonly told: readonly unknown[];
}

/** The rows of a walk, for as long as somebody holds its first panel. */
const rowsOf = new WeakMap<WalkPanel, Map<unknown, Row>>();

/** What works told of all panels of a walk, or of all its steps. */
export interface RowMemory {
  /**
   * What a work tells of each key, in their order. Where the key at a place is the one of the look before, so is
   * the answer, and nothing else is looked up; else it is told.
   *
   * @param work known by its identity
   */
  of<Told>(
    work: unknown,
    by: readonly unknown[],
    keys: readonly unknown[],
    tell: (index: number) => Told,
  ): readonly Told[];
}

/**
 * Remembers what was told of a whole row, so that after one moved mark a check finds all else by comparing one key
 * after the other. What stands elsewhere in the row than before is asked of the memory of its own panel.
 *
 * @param first the walk's first panel
 * @param terms what every answer may depend on
 */
export function rowMemory(first: WalkPanel | undefined, terms: readonly unknown[]): RowMemory {
  const rows = (first === undefined ? undefined : rowsOf.get(first)) ?? new Map<unknown, Row>();
  if (first !== undefined && rows.size === 0) rowsOf.set(first, rows);
  return {
    of<Told>(
      work: unknown,
      by: readonly unknown[],
      keys: readonly unknown[],
      tell: (index: number) => Told,
    ) {
      const row = rows.get(work);
      const holds = row !== undefined && areSame(row.terms, terms) && areSame(row.by, by);
      const before = holds ? row : NOTHING;
      const told = keys.map((key, index) =>
        before.keys[index] === key ? (before.told[index] as Told) : tell(index),
      );
      rows.set(work, { terms, by, keys, told });
      return told;
    },
  };
}

const NOTHING: Row = { terms: [], by: [], keys: [], told: [] };
