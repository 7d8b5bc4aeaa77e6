import type { Level, Remark } from "../../lib/gait";
import { remarks as words } from "../_words";

const LEVELS: readonly Level[] = ["shows", "may-show", "tidy"];

/** How many remarks there are of each level. */
function countRemarks(found: readonly Remark[]): Readonly<Record<Level, number>> {
  const counts = { shows: 0, "may-show": 0, tidy: 0 };
  for (const { level } of found) counts[level] += 1;
  return counts;
}

/** "2 will show · 1 may show"; empty when there is none. */
export function countsInWords(found: readonly Remark[]): string {
  const counts = countRemarks(found);
  return LEVELS.filter((level) => counts[level] > 0)
    .map((level) => words.counted(counts[level], level))
    .join(words.between);
}

/** The gravest level among some remarks; null when there are none. */
export function gravestLevel(found: readonly Remark[]): Level | null {
  const counts = countRemarks(found);
  return LEVELS.find((level) => counts[level] > 0) ?? null;
}
