import type { FootState, Level, Review } from "../gait";
import { VIEWS } from "../geometry";
import type { Nib } from "../ink";
import type { Sheet } from "../sheet";

/** What a legend may explain. */
export type LegendId =
  | "marks"
  | Level
  | "on-purpose"
  | "hips"
  | "measured"
  | "band"
  | Exclude<FootState, "air">
  | "untold"
  | Nib;

/** What a sheet's print shows, and so its legend explains. */
export function legendOf({ panels }: Sheet, review: Review): ReadonlySet<LegendId> {
  const shown = new Set<LegendId>();
  for (const panel of panels) {
    for (const view of VIEWS) {
      if (Object.keys(panel.marks[view]).length > 0) shown.add("marks").add("hips");
      for (const { nib } of panel.ink[view]) shown.add(nib);
    }
  }
  for (const { level } of review.remarks) shown.add(level);
  if (review.remarks.some(({ spots }) => spots.length > 0)) shown.add("measured");
  if (review.kept.length > 0) shown.add("on-purpose");
  if (review.hipCurve.bands.length > 0) shown.add("band");
  for (const { foot } of review.footfalls) {
    if (foot.kind !== "value") shown.add("untold");
    else if (foot.state !== "air") shown.add(foot.state);
  }
  return shown;
}
