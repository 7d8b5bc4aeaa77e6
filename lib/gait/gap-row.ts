import { gathered } from "../gathered";
import { expectedIn } from "./expected-in";
import type { Level, Remark } from "./finding";
import type { Step } from "./step";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";

/** Two panels next to each other on the strip, and the frames between them. */
export interface GapCell {
  readonly from: string;
  readonly to: string;
  /** Frames from the one to the other. */
  readonly frames: number;
  /** What the yardstick expects, or null where it expects nothing of these two. */
  readonly expected: number | null;
  /** Of the gravest remark about time that speaks of both panels; null where none does. */
  readonly level: Level | null;
}

/**
 * The row of gaps under the ruler.
 *
 * Shapes:  one cell between each two panels; remarks come gravest first
 * Units:   frames
 */
export function gapRow(study: Study, remarks: readonly Remark[]): readonly GapCell[] {
  const expected = expectedBetween(study);
  const inTime = remarks.filter(({ check }) => check === "gaps");
  const { panels } = study.walk;
  return gathered(panels.slice(1), (to, index) => {
    const from = panels[index];
    if (from === undefined) return [];
    return [
      {
        from: from.id,
        to: to.id,
        frames: to.frame - from.frame,
        expected: expectedUpTo(expected.get(from), to),
        level: inTime.find((remark) => speaksOf(remark, from.id, to.id))?.level ?? null,
      },
    ];
  });
}

function speaksOf({ panels }: Remark, from: string, to: string): boolean {
  return panels.includes(from) && panels.includes(to);
}

/** The frames that are expected from one panel to another. */
interface Expected {
  readonly from: WalkPanel;
  readonly to: WalkPanel;
  readonly frames: number;
}

function expectedUpTo(expected: Expected | undefined, to: WalkPanel): number | null {
  return expected?.to === to ? expected.frames : null;
}

/** Expected frames by the panel that they begin with, for those of a step in the yardstick's order. */
function expectedBetween(study: Study): ReadonlyMap<WalkPanel, Expected> {
  const all = new Map<WalkPanel, Expected>();
  for (const inStep of study.inSteps(expectedInStep)) {
    for (const one of inStep) all.set(one.from, one);
  }
  return all;
}

function expectedInStep(study: Study, step: Step): readonly Expected[] {
  const timed = expectedIn(study, step) ?? [];
  const gaps = gathered(timed.slice(1), (to, index): readonly Expected[] => {
    const from = timed[index];
    if (from === undefined) return [];
    return [{ from: from.panel, to: to.panel, frames: to.expected - from.expected }];
  });
  return gaps.some(({ frames }) => frames < 0) ? [] : gaps; // drawn in another order than expected
}
