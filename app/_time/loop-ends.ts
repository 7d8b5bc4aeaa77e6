import type { Frame } from "../../lib/motion";
import type { Panel } from "../../lib/sheet";

/** One end of the loop on the strip; a loop begins and ends on panels, and has some time. */
export interface LoopEnd {
  readonly panels: readonly Pick<Panel, "frame">[];
  readonly end: "from" | "to";
  /** The frame of its other end. */
  readonly other: Frame;
}

/** The frame nearest to a wanted one that this end may stand on; null while there is none. */
export function nearestEnd(loop: LoopEnd, wanted: Frame): Frame | null {
  return allowed(loop).reduce<Frame | null>(
    (best, frame) =>
      best === null || Math.abs(frame - wanted) < Math.abs(best - wanted) ? frame : best,
    null,
  );
}

/** The next frame one way that this end may stand on; null at the last. */
export function nextEnd(loop: LoopEnd, from: Frame, by: 1 | -1): Frame | null {
  const frames = allowed(loop);
  const next =
    by > 0 ? frames.find((frame) => frame > from) : frames.findLast((frame) => frame < from);
  return next ?? null;
}

/** Where an end is shown: on its panel, or at the strip's own end where that has left, as play has it. */
export function standing(panels: LoopEnd["panels"], frame: Frame, end: LoopEnd["end"]): Frame {
  if (panels.some((panel) => panel.frame === frame)) return frame;
  return panels.at(end === "from" ? 0 : -1)?.frame ?? frame;
}

function allowed({ panels, end, other }: LoopEnd): readonly Frame[] {
  return panels
    .map(({ frame }) => frame)
    .filter((frame) => (end === "from" ? frame < other : frame > other));
}
