import type { Remark, Review } from "../../lib/gait";

/**
 * The remarks that a viewer sees at a panel: those whose last panel it is. Tidy ones are not seen,
 * so the corner of a panel does not count them.
 */
export function seenAt(
  review: Pick<Review, "remarksByPanel"> | null,
  panel: string,
): readonly Remark[] {
  const found = review?.remarksByPanel.get(panel) ?? [];
  return found.filter((remark) => remark.level !== "tidy" && remark.panels.at(-1) === panel);
}
