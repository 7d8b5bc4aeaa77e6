import type { Remark } from "../finding";
import type { FixChange } from "../fix";
import { RANGE_LIMITS } from "../methods/hip-range";
import type { Step } from "../step";
import { type PosedHips, stepHeights } from "../step-heights";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { percent, sided } from "../words";
import { marksMoved, moveBody } from "./move-pose";
import type { Proposal } from "./proposal";

/** How far inside the limits the hips are put, leg lengths: more than a drawing's ± of 0.5 %. */
const INSIDE = 0.01;

/** Panels and how much higher their hips are to be. Leg lengths. */
type Rises = readonly { readonly panel: WalkPanel; readonly by: number }[];

/**
 * Hips that rise and sink too much: the poses at the top lowered, or those at the bottom raised, or all drawn
 * together about the contact. Hips that stay level: the pose that is to be the highest raised, or the down
 * lowered, or both. Feet are kept and knees solved.
 */
export function fixRange(
  study: Study,
  { panels, measured, expected }: Remark,
): readonly Proposal[] {
  const step = study.steps.find(({ panels: own, next }) =>
    panels.every((id) => next?.id === id || own.some((panel) => panel.id === id)),
  );
  if (step === undefined) return [];
  const heights = stepHeights(study, step);
  // By the walk's own step the range is to be that step's; by trade and life well inside what passes.
  const own = study.pattern === null ? null : expected.value;
  const ways =
    measured.value > expected.value
      ? calmer(step, heights, own ?? SPAN.to - INSIDE)
      : livelier(study, step, heights, own ?? SPAN.from + INSIDE);
  return ways.flatMap((rises) => proposed(study, step, rises));
}

const SPAN = { from: RANGE_LIMITS.at(-1)?.from ?? 0, to: RANGE_LIMITS.at(-1)?.to ?? 0 };

function calmer({ contact }: Step, heights: readonly PosedHips[], most: number): Rises[] {
  const values = heights.map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const middle = heights.find(({ panel }) => panel === contact)?.value ?? (low + high) / 2;
  const share = most / (high - low);
  return [
    heights.map(({ panel, value }) => ({ panel, by: Math.min(0, low + most - value) })),
    heights.map(({ panel, value }) => ({ panel, by: Math.max(0, high - most - value) })),
    heights.map(({ panel, value }) => ({ panel, by: (share - 1) * (value - middle) })),
  ];
}

function livelier(study: Study, step: Step, heights: readonly PosedHips[], least: number): Rises[] {
  const values = heights.map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const heightOf = (panel: WalkPanel) => heights.find((one) => one.panel === panel)?.value ?? low;
  const top = (study.common === "trade" ? step.up : null) ?? step.passing ?? step.up;
  const bottom = step.down ?? step.contact;
  const raised = top === null ? [] : [{ panel: top, by: low + least - heightOf(top) }];
  const lowered = [{ panel: bottom, by: high - least - heightOf(bottom) }];
  const half = [...raised, ...lowered].map(({ panel, by }) => ({ panel, by: by / 2 }));
  return [raised, lowered, half];
}

function proposed({ leg }: Study, step: Step, rises: Rises): Proposal[] {
  const moved = rises.filter(({ by }) => by !== 0);
  const [first] = moved;
  if (leg.kind === "cannot-tell" || first === undefined) return [];
  const changes = moved.flatMap(({ panel, by }): readonly FixChange[] =>
    marksMoved(panel, moveBody(panel, { forward: 0, up: by * leg.value, aside: 0 }).marks),
  );
  const amount = percent({ value: first.by, plusMinus: 0 });
  const what = sided(first.panel.weightOn ?? step.weightOn, first.panel.pose);
  const title =
    moved.length === 1
      ? `${first.by > 0 ? "Raise" : "Lower"} the ${what} by ${amount} of a leg`
      : `Move the hips of ${moved.length} poses`;
  return [{ title, changes }];
}
