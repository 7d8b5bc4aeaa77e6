import { limbJoint, otherSide } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { type Answer, answerOf, type Value } from "../answer";
import { type FrontMark, frontMark } from "../front-mark";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/**
 * The hips' range over some poses: the highest less the lowest.
 *
 * Units:   leg lengths
 * Errors:  none; fewer than two poses whose hips are marked answer "cannot-tell"
 * Source:  317 captured steps: 3.0 % of a leg on average, 0.9 to 9.1 %
 */
export function hipRange(study: Study, panels: readonly WalkPanel[]): Answer {
  const heights = panels
    .map((panel) => study.hipOf(panel))
    .filter((height): height is typeof height & Value => height.kind === "value");
  return span(
    heights.map(({ value, plusMinus }) => ({ at: value, plusMinus })),
    "the hips marked in two poses of the step",
  );
}

/**
 * The hips' range from side to side over a stride, from the front. What they have drifted from its first pose
 * to its last is taken off evenly: a cycle closes.
 *
 * Shapes:  the poses of a stride, from a contact to the same foot's next
 * Units:   leg lengths across the walk
 * Errors:  none; without both hips in the first pose, the last and one between it answers "cannot-tell"
 * Source:  245 captured strides: 6.8 % of a leg on average
 */
export function hipSway({ leg }: Study, panels: readonly WalkPanel[]): Answer {
  const across = panels.map((panel) => {
    const left = frontMark(panel, "left-hip", leg);
    const right = frontMark(panel, "right-hip", leg);
    return left === null || right === null ? null : { frame: panel.frame, ...middle(left, right) };
  });
  const needs = "both hips marked in the front view, from a contact to the same foot's next";
  const [first] = across;
  const last = across.at(-1);
  if (first == null || last == null || !(last.frame > first.frame)) {
    return { kind: "cannot-tell", needs };
  }
  const drift = (last.z - first.z) / (last.frame - first.frame);
  const told = gathered(across, (one) =>
    one === null
      ? []
      : [{ at: one.z - drift * (one.frame - first.frame), plusMinus: one.plusMinus }],
  );
  return told.length < 3 ? { kind: "cannot-tell", needs } : span(told, needs);
}

interface Spot {
  readonly at: number;
  readonly plusMinus: number;
}

function span(spots: readonly Spot[], needs: string): Answer {
  const sorted = spots.toSorted((a, b) => a.at - b.at);
  const [low] = sorted;
  const high = sorted.at(-1);
  if (low === undefined || high === undefined || low === high)
    return { kind: "cannot-tell", needs };
  return answerOf(high.at - low.at, rootSumSquare(low.plusMinus, high.plusMinus), "leg", needs);
}

/**
 * How far the hips are shifted at passing toward the foot that carries, from the middle between it and the
 * other foot where that stands next: at its own passing, or at a contact without one.
 *
 * Units:   leg lengths across the walk; below 0 they are shifted away
 * Errors:  none; without the front view's hips and feet it answers "cannot-tell"
 * Source:  317 captured steps: 3.1 % of a leg on average
 */
export function hipShift({ leg, steps }: Study, step: Step): Answer {
  const needs = "both hips and feet marked in the front view at passing and contact";
  const { weightOn: side, passing, contact, next } = step;
  if (side === null || passing === null) return { kind: "cannot-tell", needs };
  const left = frontMark(passing, "left-hip", leg);
  const right = frontMark(passing, "right-hip", leg);
  if (left === null || right === null) return { kind: "cannot-tell", needs };
  const hips = middle(left, right);
  const following = steps.find((one) => one.contact === next)?.passing ?? null;
  const stances = [following, next, contact].filter((panel) => panel !== null);
  for (const panel of stances) {
    for (const joint of ["ankle", "ball", "heel", "toe"] as const) {
      const standing = frontMark(passing, limbJoint(side, joint), leg);
      const other = frontMark(panel, limbJoint(otherSide(side), joint), leg);
      if (standing === null || other === null) continue;
      const feet = middle(standing, other);
      const toward = side === "right" ? 1 : -1; // z runs to the walker's right
      const plusMinus = rootSumSquare(hips.plusMinus, feet.plusMinus);
      return answerOf(toward * (hips.z - feet.z), plusMinus, "leg", needs);
    }
  }
  return { kind: "cannot-tell", needs };
}

type Across = Pick<FrontMark, "z" | "plusMinus">;

function middle(a: Across, b: Across): Across {
  return { z: (a.z + b.z) / 2, plusMinus: rootSumSquare(a.plusMinus, b.plusMinus) / 2 };
}
