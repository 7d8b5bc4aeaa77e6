import { applyFix } from "./apply-fix";
import type { CheckId, Level, Remark } from "./finding";
import type { Fix } from "./fix";
import { fixFor } from "./fix-for";
import type { Against } from "./pattern";
import { type Review, reviewWalk } from "./review-walk";
import { toldAs } from "./told-as";
import type { Walk } from "./walk";

/** Remarks of one cause: the one that speaks, and what is also read from the same. */
export interface ToldTogether {
  readonly lead: Remark;
  /** By rank. */
  readonly also: readonly Remark[];
}

/** What of a review the cause of its remarks is found by. */
export type Reviewed = Pick<Review, "yardstick" | "remarks" | "kept" | "cannotTell">;

/** How a remark's fix is found: `fixFor`, or what remembers its answers. */
export type FixOf = (remark: Remark) => Fix | null;

/**
 * The open remarks of a review, those of one cause together. A remark leads another where its fix, tried, makes
 * the other go too, without the other's check firing elsewhere or being left without an answer; and where the
 * other is no graver. Of two whose fixes settle each other the one that ranks first leads.
 *
 * Shapes:  a review of this walk in; every remark in exactly one group out, groups by the gravest in them
 * Errors:  none
 * Cost:    a fix, which is some reviews, for each remark that is not yet told with another: ask at leisure
 */
export function toldTogether(
  walk: Walk,
  review: Reviewed,
  against: Against = {},
): readonly ToldTogether[] {
  const work = findingCauses(walk, review, (remark) => fixFor(walk, remark, against), against);
  for (;;) {
    const { done, value } = work.next();
    if (done === true) return value;
  }
}

/** The same by pieces, a remark's fix each, for those who have other things to do in between. */
export function* findingCauses(
  walk: Walk,
  review: Reviewed,
  fixOf: FixOf,
  against: Against = {},
): Generator<undefined, readonly ToldTogether[]> {
  const leadOf = new Map<Remark, Remark>();
  const leads = new Set<Remark>();
  for (const lead of review.remarks) {
    if (leadOf.has(lead)) continue;
    const fix = fixOf(lead);
    const settled = fix === null ? [] : settledBy(walk, review, fix, against);
    for (const other of settled) {
      const free = other !== lead && !leadOf.has(other) && !leads.has(other);
      if (!free || GRAVITY[other.level] > GRAVITY[lead.level]) continue;
      leadOf.set(other, lead);
      leads.add(lead);
    }
    yield;
  }
  return grouped(review.remarks, leadOf);
}

const GRAVITY: Readonly<Record<Level, number>> = { shows: 2, "may-show": 1, tidy: 0 };

/** The remarks that go with a fix, and are not merely told elsewhere or no longer to be told. */
function settledBy(
  walk: Walk,
  { yardstick, remarks, kept, cannotTell }: Reviewed,
  fix: Fix,
  against: Against,
): readonly Remark[] {
  const after = reviewWalk(applyFix(walk, fix), yardstick, [], against);
  const before = new Set([...remarks, ...kept.map(({ remark }) => remark)].map(toldAs));
  const left = new Set(after.remarks.map(toldAs));
  const fresh = after.remarks.filter((one) => !before.has(toldAs(one)));
  const moved = new Set(fresh.map(({ check }) => check));
  return remarks.filter(
    (one) =>
      !left.has(toldAs(one)) &&
      !moved.has(one.check) &&
      untold(after.cannotTell, one.check) <= untold(cannotTell, one.check),
  );
}

const untold = (cannotTell: Review["cannotTell"], check: CheckId): number =>
  cannotTell.filter((one) => one.check === check).length;

function grouped(
  remarks: readonly Remark[],
  leadOf: ReadonlyMap<Remark, Remark>,
): readonly ToldTogether[] {
  const groups = new Map<Remark, Remark[]>();
  for (const remark of remarks) {
    const lead = leadOf.get(remark) ?? remark;
    const also = groups.get(lead) ?? [];
    groups.set(lead, also);
    if (remark !== lead) also.push(remark);
  }
  return [...groups].map(([lead, also]) => ({ lead, also }));
}
