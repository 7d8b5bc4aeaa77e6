/** Scrolls the margin to the first remark that is seen at a panel, and unfolds it where it is folded. */
export function bringToRemarks(panel: string): void {
  const first = document.querySelector(`[data-remarks-at~="${CSS.escape(panel)}"]`);
  const fold = first?.closest("details");
  if (fold != null) fold.open = true;
  first?.scrollIntoView({ block: "nearest" });
}
