import type { Kept, OnPurpose, Remark } from "../gait";

/** What the team keeps on purpose, with all the remarks that one entry speaks of. */
export interface KeptEntry {
  readonly entry: OnPurpose;
  /** In the review's order; never empty. */
  readonly remarks: readonly Remark[];
}

/** Kept remarks gathered by their entry, so that a reason is printed once. */
export function keptEntries(kept: readonly Kept[]): readonly KeptEntry[] {
  const byEntry = new Map<OnPurpose, Remark[]>();
  for (const { entry, remark } of kept) {
    byEntry.set(entry, [...(byEntry.get(entry) ?? []), remark]);
  }
  return [...byEntry].map(([entry, remarks]) => ({ entry, remarks }));
}
