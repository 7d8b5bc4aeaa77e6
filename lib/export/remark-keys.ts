import type { Remark, Review } from "../gait";
import type { Panel } from "../sheet";
import type { KeptEntry } from "./kept-entries";

/** A thing with the number that the page knows it by. */
export type Keyed<T> = T & { readonly key: number };

export type KeyedRemark = Keyed<{ readonly remark: Remark }>;

/**
 * Numbers the remarks as a page is read: by the panel where each is seen, graver ones first. Tidy
 * remarks stay folded away and get no number.
 */
export function keyRemarks(
  { remarks }: Pick<Review, "remarks">,
  panels: readonly Pick<Panel, "id">[],
): readonly KeyedRemark[] {
  const placeOf = placesOf(panels);
  return remarks
    .filter((remark) => remark.level !== "tidy")
    .map((remark, rank) => ({ remark, rank }))
    .sort((a, b) => placeOf(a.remark) - placeOf(b.remark) || a.rank - b.rank)
    .map(({ remark }, index) => ({ key: index + 1, remark }));
}

/** Numbers what is kept on purpose, on from the open remarks: by the first panel where each is seen. */
export function keyKept(
  kept: readonly KeptEntry[],
  panels: readonly Pick<Panel, "id">[],
  open: number,
): readonly Keyed<KeptEntry>[] {
  const placeOf = placesOf(panels);
  const first = ({ remarks }: KeptEntry) => Math.min(...remarks.map(placeOf));
  return kept
    .map((one, rank) => ({ one, rank, place: first(one) }))
    .sort((a, b) => a.place - b.place || a.rank - b.rank)
    .map(({ one }, index) => ({ ...one, key: open + index + 1 }));
}

/** What is kept of the remarks that are seen on a panel. */
export function keptOn(kept: readonly Keyed<KeptEntry>[], panel: string) {
  return kept.filter(({ remarks }) => remarks.some(({ panels }) => panels.at(-1) === panel));
}

/** Where on the strip a remark is seen, as an index; past the end where nowhere. */
function placesOf(panels: readonly Pick<Panel, "id">[]): (remark: Remark) => number {
  const place = new Map(panels.map((panel, index) => [panel.id, index]));
  return (remark) => place.get(remark.panels.at(-1) ?? "") ?? panels.length;
}

/** The remarks whose sign hangs on a panel: those seen there. */
export function remarksOn(keyed: readonly KeyedRemark[], panel: string): readonly KeyedRemark[] {
  return keyed.filter(({ remark }) => remark.panels.at(-1) === panel);
}
