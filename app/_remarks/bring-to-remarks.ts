/** Scrolls the margin to the first remark that is seen at a panel, and unfolds whatever it is folded in. */
export function bringToRemarks(panel: string): void {
  const first = document.querySelector(`[data-remarks-at~="${CSS.escape(panel)}"]`);
  for (let fold = first?.closest("details"); fold != null; ) {
    fold.open = true;
    fold = fold.parentElement?.closest("details");
  }
  first?.scrollIntoView({ block: "nearest" });
}
