import { footJoints, SIDES, type Side, shiftedMarks } from "../../body";
import type { Remark } from "../finding";
import type { FixChange } from "../fix";
import { WIDTH } from "../methods/width";
import { stepWidth } from "../readings/between-feet";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { percent } from "../words";
import { marksMoved } from "./move-pose";
import type { Proposal } from "./proposal";

/** How far within the limit a foot is put, leg lengths: what stands on the limit may fall either way. */
const WELL_WITHIN = 0.005;

/**
 * Feet too near or too far apart: the foot that ends the step is shifted aside in the front view wherever
 * it stands next, or, where that brings other remarks, both feet by half as much in every pose.
 */
export function fixWidth(study: Study, remark: Remark): readonly Proposal[] {
  const { walk, steps, leg } = study;
  const last = remark.panels.at(-1);
  const after = (one: Step) => steps.find(({ contact }) => contact === one.next);
  const step = steps.find(
    (one) =>
      one.weightOn === remark.side && (one.next?.id === last || after(one)?.passing?.id === last),
  );
  if (step?.next == null || step.weightOn === null || leg.kind === "cannot-tell") return [];
  const reading = stepWidth(study, step);
  if (reading.kind === "cannot-tell") return [];
  const by = aimOf(study, remark) - reading.value; // wider is above 0
  const lands: Side = step.weightOn === "left" ? "right" : "left";
  const following = steps.find(({ contact }) => contact === step.next);
  const stance = new Set([step.next, ...(following?.panels ?? []), following?.next ?? step.next]);
  const amount = percent({ value: by, plusMinus: 0 });
  const way = by > 0 ? "out" : "in";
  const units = by * leg.value;
  return [
    {
      title: `Set the ${lands} foot ${amount} of a leg farther ${way}`,
      changes: walk.panels
        .filter((panel) => stance.has(panel))
        .flatMap((panel) => asideBy(panel, [lands], units)),
    },
    {
      title: `Set both feet farther ${way}, together by ${amount} of a leg`,
      changes: walk.panels.flatMap((panel) => asideBy(panel, SIDES, units / 2)),
    },
  ];
}

/** How wide the step is to be: as the step it goes by, or just within what passes in any walk. Leg lengths. */
function aimOf({ pattern }: Study, { expected }: Remark): number {
  if (pattern !== null) return expected.value;
  return expected.value === WIDTH.to ? WIDTH.to - WELL_WITHIN : WIDTH.from + WELL_WITHIN;
}

/** Feet of one pose moved apart across the walk; the knees follow by half. Panel units, out is above 0. */
function asideBy(panel: WalkPanel, feet: readonly Side[], by: number): readonly FixChange[] {
  const front = feet.reduce((marks, side) => {
    const x = side === "left" ? by : -by; // the walker's left is on the front view's right
    const footed = shiftedMarks(marks, footJoints(side), { x, y: 0 });
    return shiftedMarks(footed, [`${side}-knee`], { x: x / 2, y: 0 });
  }, panel.marks.front);
  return marksMoved(panel, { ...panel.marks, front });
}
