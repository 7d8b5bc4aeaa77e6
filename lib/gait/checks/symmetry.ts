import { gathered } from "../../gathered";
import type { Finding } from "../finding";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";
import { cannotTell } from "./answers";
import { type Stride, stridesOf } from "./strides";
import { leanPart } from "./symmetry-lean";
import { lengthPart } from "./symmetry-length";
import { posePart } from "./symmetry-poses";
import { ANGLE_PAIRS, CLEARANCE_PAIRS, HEIGHT_PAIRS } from "./symmetry-readings";

/**
 * Do the two steps of a stride mirror each other: in the swing of the shoulders, in length, and pose by
 * pose in the height of the hips, the lift of the swinging foot and the angles of the limbs?
 *
 * Shapes:  at most one remark a stride for each of these, the gravest; where there is none, one answer a
 *          stride; an odd step at the end is held against the one before it
 * Units:   radians, shares, leg lengths
 * Errors:  none; what neither pose of a pair has marked answers "cannot-tell"
 * Source:  beside the limits, in its method; that a pose shows beyond twice what captured pairs differ by
 *          is our own choice
 */
export function symmetry(study: Study): readonly Finding[] {
  if (isQuiet(study.walk.kind, "symmetry")) return [];
  const strides = stridesOf(study.steps);
  if (strides.length > 0)
    return gathered(strides, ({ first, second }) => study.onceWithNext(first, judge, second));
  const about = { check: "symmetry", side: null, panels: [] } as const;
  return [cannotTell(about, "the same pose of two steps")];
}

function judge(study: Study, first: Step, second: Step): Finding[] {
  const stride: Stride = { first, second };
  const lean = leanPart(study, stride);
  const parts = [
    lean,
    lengthPart(study, stride),
    posePart(study, stride, HEIGHT_PAIRS),
    posePart(study, stride, CLEARANCE_PAIRS),
    posePart(study, stride, ANGLE_PAIRS),
  ];
  const told: Finding[] = [
    ...parts.map(({ remark }) => remark),
    ...parts.map(({ open }) => open),
  ].filter((finding) => finding !== null);
  if (told.length > 0) return told;
  return lean.sound === null ? [] : [lean.sound];
}
