import type { CannotTell, Remark, Review } from "../gait";
import type { Panel } from "../sheet";

/** A remark with the number that the page knows it by. */
export interface KeyedRemark {
  readonly key: number;
  readonly remark: Remark;
}

/**
 * Numbers the remarks as a page is read: by the panel where each is seen, graver ones first. Tidy
 * remarks stay folded away and get no number.
 */
export function keyRemarks(
  { remarks }: Pick<Review, "remarks">,
  panels: readonly Pick<Panel, "id">[],
): readonly KeyedRemark[] {
  const place = new Map(panels.map((panel, index) => [panel.id, index]));
  const placeOf = (remark: Remark) => place.get(remark.panels.at(-1) ?? "") ?? panels.length;
  return remarks
    .filter((remark) => remark.level !== "tidy")
    .map((remark, rank) => ({ remark, rank }))
    .sort((a, b) => placeOf(a.remark) - placeOf(b.remark) || a.rank - b.rank)
    .map(({ remark }, index) => ({ key: index + 1, remark }));
}

/** The remarks whose sign hangs on a panel: those seen there. */
export function remarksOn(keyed: readonly KeyedRemark[], panel: string): readonly KeyedRemark[] {
  return keyed.filter(({ remark }) => remark.panels.at(-1) === panel);
}

/** What could not be judged, each need told once. */
export function unanswered({ cannotTell }: Pick<Review, "cannotTell">): readonly CannotTell[] {
  const told = new Set<string>();
  return cannotTell.filter(({ check, needs }) => {
    const what = `${check} ${needs}`;
    if (told.has(what)) return false;
    told.add(what);
    return true;
  });
}
