import { greatestFirst } from "./beyond";
import type { Level, Remark } from "./finding";

const ORDER: Readonly<Record<Level, number>> = { shows: 0, "may-show": 1, tidy: 2 };

/** Remarks as they are read out: by level, then by how far beyond, then by frame and check. */
export function rankRemarks(remarks: readonly Remark[]): readonly Remark[] {
  return remarks.toSorted(
    (a, b) =>
      ORDER[a.level] - ORDER[b.level] ||
      greatestFirst(a.beyond, b.beyond) ||
      (a.frames[0] ?? 0) - (b.frames[0] ?? 0) ||
      (a.check < b.check ? -1 : 1),
  );
}
