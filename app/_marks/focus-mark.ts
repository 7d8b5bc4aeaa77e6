import type { JointName } from "../../lib/body";
import type { View } from "../../lib/geometry";
import type { PanelId } from "../../lib/sheet";

const paperOf = (panel: PanelId, view: View) =>
  `[data-panel="${CSS.escape(panel)}"][data-view="${view}"]`;

/** Puts the focus on a mark of the paper in hand, so that arrow keys move it. */
export function focusMark(panel: PanelId, view: View, joint: JointName): void {
  document.querySelector<HTMLElement>(`${paperOf(panel, view)} [data-joint="${joint}"]`)?.focus();
}

/** Puts the focus on the guess of a paper, so that arrow keys bring it somewhere. False: there is none. */
export function focusGuess(panel: PanelId, view: View): boolean {
  const guess = document.querySelector<HTMLElement>(`${paperOf(panel, view)} [data-guess]`);
  guess?.focus({ preventScroll: true });
  return guess !== null;
}
