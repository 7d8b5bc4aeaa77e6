import { type LimbJoint, limbJoint, otherSide, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import type { Reading } from "../finding";
import { type FrontMark, frontMark } from "../front-mark";
import { FRONT_RULES, type FrontRule } from "../methods/weight-front";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/** A question answered at one step. `measured` is as the rule counts: more is worse. */
export interface Asked {
  readonly rule: FrontRule;
  readonly measured: Reading;
}

/** Every rule that the marks can answer. */
export function askedAcross(study: Study, step: Step, side: Side, passing: WalkPanel): Asked[] {
  const toward = side === "right" ? 1 : -1; // z runs to the walker's right
  const hips = hipsAcross(study, passing);
  const before = hipsAcross(study, step.contact);
  const feet = hips === null ? null : feetAcross(study, step, side, passing);
  const readings: Readonly<Record<FrontRule["id"], Reading | null | undefined>> = {
    distance: hips && feet && reading(Math.abs(hips.z - feet.standing.z), [hips, feet.standing]),
    shift:
      hips &&
      feet?.other &&
      reading(-toward * (hips.z - (feet.standing.z + feet.other.z) / 2), [
        hips,
        half(feet.standing),
        half(feet.other),
      ]),
    move: hips && before && reading(-toward * (hips.z - before.z), [hips, before]),
  };
  return gathered(FRONT_RULES, (rule) => {
    const measured = readings[rule.id];
    return measured === null || measured === undefined ? [] : [{ rule, measured }];
  });
}

type Across = Pick<FrontMark, "z" | "plusMinus">;

function reading(value: number, parts: readonly Across[]): Reading {
  return { value, plusMinus: rootSumSquare(...parts.map((part) => part.plusMinus)), unit: "leg" };
}

function half({ z, plusMinus }: Across): Across {
  return { z, plusMinus: plusMinus / 2 };
}

/** From the front one hip alone does not say where the middle is. */
function hipsAcross({ leg }: Study, panel: WalkPanel): Across | null {
  const left = frontMark(panel, "left-hip", leg);
  const right = frontMark(panel, "right-hip", leg);
  return left === null || right === null ? null : middle(left, right);
}

function middle(a: Across, b: Across): Across {
  return { z: (a.z + b.z) / 2, plusMinus: rootSumSquare(a.plusMinus, b.plusMinus) / 2 };
}

const FOOT: readonly LimbJoint[] = ["ankle", "ball", "heel", "toe"];

/** The foot that carries at passing, and where the other stood: at the contacts before and after. */
function feetAcross({ leg }: Study, step: Step, side: Side, passing: WalkPanel) {
  const stances = [step.contact, step.next].filter((panel) => panel !== null);
  const found = gathered(FOOT, (joint) => {
    const standing = frontMark(passing, limbJoint(side, joint), leg);
    if (standing === null) return [];
    const [one, two = one] = stances
      .map((panel) => frontMark(panel, limbJoint(otherSide(side), joint), leg))
      .filter((mark) => mark !== null);
    return [{ standing, other: one && two ? middle(one, two) : null, joint }];
  });
  return found.find(({ other }) => other !== null) ?? found[0] ?? null;
}
