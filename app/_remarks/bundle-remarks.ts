import { remarks as words } from "../_words";
import type { RankedRemark } from "./group-remarks";

/** Remarks that say the same of several places: one card. */
export interface RemarkBundle {
  readonly key: string;
  readonly title: string;
  /** By rank; never empty. */
  readonly remarks: readonly [RankedRemark, ...RankedRemark[]];
}

/**
 * Remarks as the margin lists many: what a viewer sees first comes first, and what is said of both sides or
 * of several panels is said once, with its places.
 *
 * Shapes:  ranked remarks in; every one in exactly one bundle out, bundles by their gravest
 */
export function bundleRemarks(ranked: readonly RankedRemark[]): readonly RemarkBundle[] {
  const bundles = new Map<string, [RankedRemark, ...RankedRemark[]]>();
  for (const entry of ranked) {
    const key = `${entry.remark.check} ${withoutSide(entry.remark.title)}`;
    const bundle = bundles.get(key);
    if (bundle === undefined) bundles.set(key, [entry]);
    else bundle.push(entry);
  }
  return [...bundles].map(([key, remarks]) => ({ key, title: titleOf(remarks), remarks }));
}

/** "foot slips", of "Left foot slips". */
function withoutSide(title: string): string {
  return title.replace(/\b(?:left|right)\b ?/gi, "").trim();
}

function titleOf(remarks: readonly [RankedRemark, ...RankedRemark[]]): string {
  const titles = new Set(remarks.map(({ remark }) => remark.title));
  const [{ remark }] = remarks;
  return titles.size === 1 ? remark.title : words.bothSides(withoutSide(remark.title));
}

/** More bundles than these are not read at once. */
const MOST_BUNDLES = 5;

/** The bundles that are read at once, and those that wait; one alone is not worth a fold. */
export function foldBundles(bundles: readonly RemarkBundle[]): {
  readonly shown: readonly RemarkBundle[];
  readonly folded: readonly RemarkBundle[];
} {
  if (bundles.length <= MOST_BUNDLES + 1) return { shown: bundles, folded: [] };
  return { shown: bundles.slice(0, MOST_BUNDLES), folded: bundles.slice(MOST_BUNDLES) };
}
