import type { Kept, Review } from "../../lib/gait";

/** What is kept on purpose where a panel shows it: as with remarks, the last panel that it names. */
export function keptAt(review: Pick<Review, "keptByPanel"> | null, panel: string): readonly Kept[] {
  return (review?.keptByPanel.get(panel) ?? []).filter(
    ({ remark }) => remark.panels.at(-1) === panel,
  );
}
