/** What scrolls on the board: the strip, or the drawing desk. */
const SCROLLER = "[data-scroller]";

/** Brings a panel of the strip into sight. Called for keys and remarks, never under somebody's pen. */
export function bringIntoSight(panel: string): void {
  requestAnimationFrame(() => {
    const column = document.querySelector(`[data-column="${CSS.escape(panel)}"]`);
    column?.scrollIntoView({ block: "nearest", inline: "nearest" });
  });
}

/** Moves what is looked at, in CSS pixels. */
export function panBy(right: number, down: number): void {
  document.querySelector(SCROLLER)?.scrollBy(right, down);
}
