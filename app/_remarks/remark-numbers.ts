import { keyRemarks } from "../../lib/export";
import type { Remark, Review } from "../../lib/gait";

const NONE: ReadonlyMap<Remark, number> = new Map();

const known = new WeakMap<Review, ReadonlyMap<Remark, number>>();

/** The number that margin, paper and print know each remark by; tidy ones have none. */
export function remarkNumbers(review: Review | null): ReadonlyMap<Remark, number> {
  if (review === null) return NONE;
  const numbered = known.get(review);
  if (numbered !== undefined) return numbered;
  const panels = review.hipCurve.points.map(({ panel }) => ({ id: panel }));
  const numbers = new Map(keyRemarks(review, panels).map(({ remark, key }) => [remark, key]));
  known.set(review, numbers);
  return numbers;
}
