import type { Panel, Sheet } from "../../lib/sheet";

/** A panel seen through the paper. `distance` 1 is the next one; it is the strongest. */
export interface OnionNeighbour {
  readonly panel: Panel;
  readonly when: "before" | "after";
  readonly distance: number;
}

/** The panels to be seen through one, the farthest first, so that near ones lie over far ones. */
export function onionNeighbours(
  { panels }: Pick<Sheet, "panels">,
  id: string,
  { before, after }: { readonly before: number; readonly after: number },
): readonly OnionNeighbour[] {
  const at = panels.findIndex((panel) => panel.id === id);
  if (at < 0) return [];
  const seen: OnionNeighbour[] = [];
  for (let distance = Math.max(before, after); distance >= 1; distance--) {
    const earlier = panels[at - distance];
    const later = panels[at + distance];
    if (later !== undefined && distance <= after) {
      seen.push({ panel: later, when: "after", distance });
    }
    if (earlier !== undefined && distance <= before) {
      seen.push({ panel: earlier, when: "before", distance });
    }
  }
  return seen;
}
