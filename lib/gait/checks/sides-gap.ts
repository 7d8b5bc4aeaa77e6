import { clearlyBeyond } from "../beyond";
import { stepFrames } from "../expected-frames";
import type { Finding, Reading } from "../finding";
import { EXPOSURES_OFF, SIDES_LIMITS, SIDES_SOURCE } from "../methods/gaps";
import type { Step } from "../step";
import type { Study } from "../study";
import { symmetryIndex } from "../symmetry-index";
import type { WalkPanel } from "../walk";
import { framesInWords, sided } from "../words";
import { stridesOf } from "./strides";

/**
 * Do the two steps of a stride take the same time? Said only when they differ by more than one
 * exposure: a frame more or less is how whole frames come out.
 *
 * Shapes:  one answer a stride; an odd step at the end is held against the one before it
 */
export function sidesGap(study: Study): readonly Finding[] {
  const strides = stridesOf(study.steps);
  if (strides.length > 0)
    return strides.map(({ first, second }) => study.onceIn(first, judge, second));
  const needs = "both steps of a stride, each with the contact that ends it";
  return [{ kind: "cannot-tell", check: "gaps", side: null, panels: [], needs }];
}

function judge(study: Study, first: Step, second: Step): Finding {
  const panels = [first.contact, second.contact, second.next].filter((panel) => panel !== null);
  const one = stepFrames(first);
  const two = stepFrames(second);
  const base = { check: "gaps", side: null, panels: panels.map(({ id }) => id) } as const;
  if (one === null || two === null) {
    return { kind: "cannot-tell", ...base, needs: "both steps of the stride ended by a contact" };
  }
  const index = symmetryIndex(one, two);
  const measured: Reading = { value: index, plusMinus: 0, unit: "share" };
  const broken = SIDES_LIMITS.find(({ value }) => clearlyBeyond(index, 0, value));
  const apart = clearlyBeyond(Math.abs(one - two), 0, EXPOSURES_OFF * study.walk.exposure);
  if (broken === undefined || !apart) return { kind: "sound", ...base, measured };
  return {
    kind: "remark",
    ...base,
    level: broken.level,
    yardstick: study.yardstick,
    frames: frames(panels),
    spots: [],
    measured,
    expected: { value: broken.value, plusMinus: 0, unit: "share" },
    title: "The two steps differ in time",
    why: `The ${sided(first.weightOn, "step")} takes ${framesInWords(one)} and the ${sided(second.weightOn, "step")} ${framesInWords(two)}, ${percentOf(index)} apart; up to ${percentOf(broken.value)} passes as even. It ${broken.level === "shows" ? "will" : "may"} read as a limp.`,
    source: SIDES_SOURCE,
    beyond: (index - broken.value) / broken.value,
  };
}

function frames(panels: readonly WalkPanel[]): number[] {
  return panels.map(({ frame }) => frame);
}

function percentOf(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}
