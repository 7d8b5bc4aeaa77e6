import type { JointName } from "../../lib/body";
import type { View } from "../../lib/geometry";
import type { PanelId } from "../../lib/sheet";

/** Puts the focus on a mark of the paper in hand, so that arrow keys move it. */
export function focusMark(panel: PanelId, view: View, joint: JointName): void {
  const paper = `[data-panel="${CSS.escape(panel)}"][data-view="${view}"]`;
  document.querySelector<HTMLElement>(`${paper} [data-joint="${joint}"]`)?.focus();
}
