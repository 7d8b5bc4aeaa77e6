import type { Fix, Remark, Review } from "../../lib/gait";
import type { Sheet } from "../../lib/sheet";
import { fixOf, remarkName } from "./fix-of";

/** A fix that is looked at, and the remark that it would settle. */
export interface ShownFix {
  readonly remark: Remark;
  readonly fix: Fix;
}

/** The fix of a remark as the sheet stands now; null when the remark has gone, or nothing known settles it. */
export function shownFix(
  sheet: Sheet,
  review: Pick<Review, "remarks"> | null,
  fixing: Remark | null,
): ShownFix | null {
  if (fixing === null || review === null) return null;
  const name = remarkName(fixing);
  const remark = review.remarks.find((one) => remarkName(one) === name);
  const fix = remark === undefined ? null : fixOf(sheet, remark);
  return remark === undefined || fix === null ? null : { remark, fix };
}
