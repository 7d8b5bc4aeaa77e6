import { SIDES, type Side } from "../body";
import { gathered } from "../gathered";
import type { CheckId, Reading, Remark, Subject } from "./finding";

/** How far something is meant: where one panel shows it, on one side, or in the whole walk. */
export type OnPurposeScope =
  | { readonly kind: "panel"; readonly panel: string; readonly side: Side | null }
  | { readonly kind: "side"; readonly side: Side }
  | { readonly kind: "walk" };
export type ScopeKind = OnPurposeScope["kind"];

/** What was read on one side, or of no side, when an entry was kept. */
export interface KeptSide {
  readonly side: Side | null;
  readonly value: number;
}

/** What a team keeps on purpose: the remarks of a check, in a scope. */
export interface OnPurpose {
  /** Eight random base64url characters. */
  readonly id: string;
  readonly check: CheckId;
  /** What of it, where the check reads several things in one unit. Entries from before hold all of them. */
  readonly subject?: Subject;
  readonly scope: OnPurposeScope;
  /** In the artist's words; may be empty. */
  readonly reason: string;
  /** What was read when it was kept: of several remarks in the scope, the farthest from nought. */
  readonly measured: Reading;
  /**
   * For the whole walk: the same for each side that had a remark then, in the unit of `measured`. Absent in a
   * narrower scope and in entries from before.
   */
  readonly sides?: readonly KeptSide[];
  /** Who kept it, by the name they had then. */
  readonly by: string;
}

/**
 * Whether an entry speaks of a remark: the same check, of the same subject, read in the same unit,
 * within its scope. A panel is the one where the remark is seen, which is its last.
 */
export function covers(
  { check, subject, scope, measured }: Pick<OnPurpose, "check" | "subject" | "scope" | "measured">,
  remark: Remark,
): boolean {
  if (check !== remark.check || measured.unit !== remark.measured.unit) return false;
  if (subject !== undefined && subject !== remark.subject) return false;
  switch (scope.kind) {
    case "panel":
      return scope.panel === remark.panels.at(-1) && scope.side === remark.side;
    case "side":
      return scope.side === remark.side;
    case "walk":
      return true;
  }
}

/** The reading farthest from nought, the first of equals; null of none. */
export function farthest(remarks: readonly Remark[]): Reading | null {
  return remarks.reduce<Reading | null>(
    (so, { measured }) =>
      so === null || Math.abs(measured.value) > Math.abs(so.value) ? measured : so,
    null,
  );
}

/** The value farthest from nought of each side that has a remark, left, right, then of no side. */
export function farthestBySide(remarks: readonly Remark[]): readonly KeptSide[] {
  return gathered([...SIDES, null], (side) => {
    const reading = farthest(remarks.filter((remark) => remark.side === side));
    return reading === null ? [] : [{ side, value: reading.value }];
  });
}

/** What an entry holds of the readings in its scope. */
export function measuredIn(
  remarks: readonly Remark[],
  { kind }: OnPurposeScope,
): Partial<Pick<OnPurpose, "measured" | "sides">> {
  const measured = farthest(remarks);
  if (measured === null) return {};
  return kind === "walk" ? { measured, sides: farthestBySide(remarks) } : { measured };
}

/**
 * What an entry that keeps a remark on purpose holds, beside who says so and why. Null where the remark
 * has no such scope: one without a side cannot be kept for a side, nor one without panels for a panel.
 *
 * @param remarks all that were made on the walk: a wide scope speaks of others too
 */
export function purposeOf(
  remarks: readonly Remark[],
  remark: Remark,
  kind: ScopeKind,
): Pick<OnPurpose, "check" | "subject" | "scope" | "measured" | "sides"> | null {
  const scope = scopeOf(remark, kind);
  if (scope === null) return null;
  const { check, subject, measured } = remark;
  const about = { check, ...(subject === undefined ? {} : { subject }), scope };
  const within = remarks.filter((one) => covers({ ...about, measured }, one));
  return { ...about, measured, ...measuredIn(within, scope) };
}

function scopeOf({ panels, side }: Remark, kind: ScopeKind): OnPurposeScope | null {
  const panel = panels.at(-1);
  if (kind === "panel") return panel === undefined ? null : { kind, panel, side };
  if (kind === "side") return side === null ? null : { kind, side };
  return { kind };
}
