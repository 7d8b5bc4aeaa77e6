import { clearlyBeyond, greatestFirst } from "../beyond";
import type { Finding, Remark } from "../finding";
import type { Grade } from "../method";
import { LOOP_GAPS, LOOP_SOURCE } from "../methods/loop";
import { LOOP_NEEDS, type LoopGap, loopGaps } from "../readings/loop-gaps";
import { walkingPanels } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { closes } from "../walk-motion";
import { percent } from "../words";
import { cannotTell, sound } from "./answers";

/**
 * Does the last pose of a loop repeat the first? What differs jumps each time the loop begins again. Asked
 * where the walk holds whole strides and ends with the contact that it began with; a walk that does not is
 * no loop, and has nothing to close.
 *
 * Shapes:  one answer, or none; by the worst joint
 * Units:   leg lengths, hips laid upon each other
 * Errors:  none; without a hip, or any joint that both poses have, it answers "cannot-tell"
 * Source:  beside the limits, in its method
 */
export function loop(study: Study): readonly Finding[] {
  const panels = walkingPanels(study.walk.panels);
  const [first, last] = [panels[0], panels.at(-1)];
  if (first === undefined || last === undefined || !closes(panels)) return [];
  const about = { check: "loop", side: null, panels: [first, last] } as const;
  if (study.leg.kind === "cannot-tell") return [cannotTell(about, study.leg.needs)];
  const gaps = loopGaps(study, first, last);
  if (gaps === null || gaps.length === 0) {
    return [cannotTell(about, LOOP_NEEDS)];
  }
  const graded = gaps.map((gap) => ({ gap, grade: gradeOf(gap) }));
  const [worst] = graded.toSorted(
    (a, b) =>
      greatestFirst(a.grade?.value ?? 0, b.grade?.value ?? 0) ||
      greatestFirst(a.gap.value, b.gap.value),
  );
  if (worst === undefined) return [];
  const { gap, grade } = worst;
  if (grade === null) return [sound(about, { ...gap, unit: "leg" })];
  return [remarkOn(study, [first, last], gap, grade)];
}

function gradeOf({ value, plusMinus }: LoopGap): Grade | null {
  return LOOP_GAPS.find((limit) => clearlyBeyond(value, plusMinus, limit.value)) ?? null;
}

function remarkOn(
  { yardstick }: Study,
  panels: readonly [WalkPanel, WalkPanel],
  { joint, value, plusMinus }: LoopGap,
  { level, value: limit }: Grade,
): Remark {
  const [first, last] = panels;
  const measured = { value, plusMinus, unit: "leg" } as const;
  const what = joint.replace("-", " ");
  const seen =
    level === "tidy"
      ? "Copied from the first, the pose would close the loop without a jump."
      : `Each time the loop begins again, it ${level === "shows" ? "will" : "may"} be seen to jump.`;
  return {
    kind: "remark",
    check: "loop",
    level,
    yardstick,
    side: null,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: panels.map(({ id }) => ({ panel: id, view: "side", joints: [joint] })),
    measured,
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: level === "tidy" ? "Loop closes nearly" : "Loop does not close",
    why: `With the hips laid upon each other, the ${what} at frame ${last.frame} lies ${percent(measured)} of a leg from where it was at frame ${first.frame}; up to ${percent({ value: limit, plusMinus: 0 })} passes. ${seen}`,
    source: LOOP_SOURCE,
    beyond: (value - limit) / limit,
  };
}
