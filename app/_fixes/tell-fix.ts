import type { Fix, FixChange } from "../../lib/gait";
import type { Panel } from "../../lib/sheet";
import { common, fixes as words } from "../_words";

/** What a fix would do, change by change, and what would then be to redraw. */
export function tellFix({ changes }: Fix, panels: readonly Panel[]): string {
  const of = (id: string) => panels.find((panel) => panel.id === id);
  const sentences = changes.flatMap((change) => sentence(change, of));
  const redrawn = changes.flatMap((change) => {
    if (change.kind !== "move-marks") return [];
    const panel = of(change.panel);
    return panel !== undefined && panel.ink[change.view].length > 0 ? [panel.frame] : [];
  });
  const frames = [...new Set(redrawn)];
  return [...new Set(sentences), ...(frames.length > 0 ? [words.willRedraw(frames)] : [])].join(
    " ",
  );
}

function sentence(change: FixChange, of: (id: string) => Panel | undefined): readonly string[] {
  if (change.kind === "add-panel") {
    return [words.adds(common.pose[change.pose], change.frame)];
  }
  if (change.kind === "advance") return [words.advances(change.advance)];
  const panel = of(change.panel);
  if (panel === undefined) return [];
  switch (change.kind) {
    case "move-marks":
      return [words.moves(panel.frame)];
    case "exchange-sides":
      return [words.exchanges(panel.frame)];
    case "slide":
      return [words.slides(panel.frame, change.frame)];
    case "relabel":
      return [
        words.relabels(
          panel.frame,
          common.pose[change.pose],
          change.weightOn === null ? null : common.side[change.weightOn],
        ),
      ];
    case "place":
      return []; // the drawing stays on the ground: nothing that is seen
  }
}
