import type { PanelId, Sheet } from "../../lib/sheet";

/** Who is taken in hand when a panel goes: the next one, or the one before the end. */
export function beside({ panels }: Sheet, id: PanelId): PanelId | null {
  const at = panels.findIndex((panel) => panel.id === id);
  return (panels[at + 1] ?? panels[at - 1])?.id ?? null;
}
