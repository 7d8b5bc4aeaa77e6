import type { Panel, PanelId, Sheet } from "../../lib/sheet";

/** The panel before (−1) or after (1) another on the strip; at an end, itself. */
export function neighbour({ panels }: Sheet, id: PanelId, by: -1 | 1): Panel | undefined {
  const at = panels.findIndex((panel) => panel.id === id);
  return at < 0 ? panels[0] : (panels[at + by] ?? panels[at]);
}
