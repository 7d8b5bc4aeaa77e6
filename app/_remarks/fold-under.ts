import { type Remark, type ToldTogether, toldAs } from "../../lib/gait";
import type { RankedRemark } from "./group-remarks";

/**
 * Ranks the open remarks, those of one cause folded under the one that speaks. What was found may be of a review
 * before this one: a remark stands by itself where the one that spoke for it has gone.
 *
 * Shapes:  ranked remarks in; every one in exactly one place out, by the gravest that is told there
 */
export function foldUnder(
  remarks: readonly Remark[],
  together: readonly ToldTogether[],
): readonly RankedRemark[] {
  const open = new Map(remarks.map((remark) => [toldAs(remark), remark]));
  const leadOf = new Map<Remark, Remark>();
  for (const { lead, also } of together) {
    const speaks = open.get(toldAs(lead));
    for (const one of also) {
      const folded = open.get(toldAs(one));
      if (speaks !== undefined && folded !== undefined) leadOf.set(folded, speaks);
    }
  }
  const under = new Map<Remark, RankedRemark[]>();
  for (const [rank, remark] of remarks.entries()) {
    const lead = leadOf.get(remark) ?? remark;
    const also = under.get(lead) ?? [];
    under.set(lead, also);
    if (lead !== remark) also.push({ remark, rank, also: [] });
  }
  const rankOf = new Map(remarks.map((remark, rank) => [remark, rank]));
  return [...under].map(([remark, also]) => ({ remark, rank: rankOf.get(remark) ?? 0, also }));
}
