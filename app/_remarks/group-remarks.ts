import type { Remark } from "../../lib/gait";

/** A remark with its place in the review's ranked list, which is what pointing out goes by. */
export interface RankedRemark {
  readonly remark: Remark;
  readonly rank: number;
  /** What is also read from its cause, by rank: it stands folded under it. */
  readonly also: readonly RankedRemark[];
}

/** The remarks that are seen at one panel; `panel` is null for those that name none. */
export interface RemarkGroup {
  readonly panel: string | null;
  readonly remarks: readonly RankedRemark[];
}

/**
 * Remarks as the margin lists them: by the panel where each is seen, the panel with the gravest
 * first, and within a panel by rank.
 *
 * Shapes:  ranked remarks in; every one in exactly one group out
 */
export function groupRemarks(ranked: readonly RankedRemark[]): readonly RemarkGroup[] {
  const groups = new Map<string | null, RankedRemark[]>();
  for (const entry of ranked) {
    const panel = entry.remark.panels.at(-1) ?? null;
    const group = groups.get(panel);
    if (group === undefined) groups.set(panel, [entry]);
    else group.push(entry);
  }
  return [...groups].map(([panel, remarks]) => ({ panel, remarks }));
}

/** What is read out, and what is folded away because nobody will see it. */
export function splitTidy(ranked: readonly RankedRemark[]): {
  readonly seen: readonly RankedRemark[];
  readonly tidy: readonly RankedRemark[];
} {
  return {
    seen: ranked.filter(({ remark }) => remark.level !== "tidy"),
    tidy: ranked.filter(({ remark }) => remark.level === "tidy"),
  };
}
