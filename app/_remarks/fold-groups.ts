import type { RemarkGroup } from "./group-remarks";

/** More than these at once are not read: the rest waits, folded, until it is asked for. */
const MOST_REMARKS = 6;

/**
 * The groups that are read at once, and those that wait. A group is never cut in two, the gravest
 * is always read, and one remark alone is not worth a fold.
 *
 * Shapes:  ranked groups in; both parts in the same order out
 */
export function foldGroups(groups: readonly RemarkGroup[]): {
  readonly shown: readonly RemarkGroup[];
  readonly folded: readonly RemarkGroup[];
} {
  let count = 0;
  const end = groups.findIndex(({ remarks }, index) => {
    count += remarks.length;
    return index > 0 && count > MOST_REMARKS;
  });
  const folded = end === -1 ? [] : groups.slice(end);
  if (countIn(folded) <= 1) return { shown: groups, folded: [] };
  return { shown: groups.slice(0, end), folded };
}

/** How many remarks some groups hold. */
export function countIn(groups: readonly RemarkGroup[]): number {
  return groups.reduce((sum, { remarks }) => sum + remarks.length, 0);
}
