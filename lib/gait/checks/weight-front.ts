import { type LimbJoint, limbJoint, otherSide, type Side } from "../../body";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond, greatestFirst } from "../beyond";
import type { Finding, Level, Reading, Remark } from "../finding";
import { type FrontMark, frontMark } from "../front-mark";
import { FRONT_RULES, type FrontRule } from "../methods/weight-front";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, percent, sided } from "../words";
import { cannotTell, NEEDS_A_SIDE, NEEDS_A_STEP, sound } from "./answers";
import { whoseStep } from "./step-words";

/** A question answered at one step. `measured` is as the rule counts: more is worse. */
interface Asked {
  readonly rule: FrontRule;
  readonly measured: Reading;
}

/**
 * Are the hips over the foot that carries, seen from the front? At passing they stand within reach
 * of its ankle, shifted from the middle between the feet toward it, and from the contact on they
 * moved toward it. The middle is that of the feet as they stand: the one that carries, and the other
 * at the contacts before and after.
 *
 * Shapes:  at most one remark a step, the gravest; else one answer
 * Units:   leg lengths across the walk
 * Errors:  none; without a front view it answers "cannot-tell"
 * Source:  beside each rule
 */
export function weightFront(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "weight-front")) return [];
  if (steps.length === 0) {
    return [cannotTell({ check: "weight-front", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  return steps.flatMap((step) => judge(study, step));
}

function judge(study: Study, step: Step): Finding[] {
  const { weightOn, contact, passing } = step;
  const panels = [contact, ...(passing === null ? [] : [passing])];
  const about = { check: "weight-front", side: weightOn, panels } as const;
  if (study.leg.kind === "cannot-tell") return [cannotTell(about, study.leg.needs)];
  if (weightOn === null) return [cannotTell(about, NEEDS_A_SIDE)];
  if (passing === null) {
    return [cannotTell(about, `the passing of ${whoseStep(weightOn)} drawn`)];
  }
  const asked = ask(study, step, weightOn, passing);
  const remarks = asked
    .flatMap((one) => remarkOn(study, { step, side: weightOn, passing }, one))
    .toSorted((a, b) => RANK[b.level] - RANK[a.level] || greatestFirst(a.beyond, b.beyond));
  const [gravest] = remarks;
  const open = asked.length < FRONT_RULES.length ? [cannotTell(about, NEEDS)] : [];
  if (gravest !== undefined) return [gravest, ...open];
  if (open.length > 0) return open;
  return [sound(about, asked.find(({ rule }) => rule.id === "shift")?.measured ?? null)];
}

const NEEDS = "the hips and feet marked in the front view at contact and passing";
const RANK: Readonly<Record<Level, number>> = { shows: 2, "may-show": 1, tidy: 0 };

/** Every rule that the marks can answer. */
function ask(study: Study, step: Step, side: Side, passing: WalkPanel): Asked[] {
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
  return FRONT_RULES.flatMap((rule) => {
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
  const found = FOOT.flatMap((joint) => {
    const standing = frontMark(passing, limbJoint(side, joint), leg);
    if (standing === null) return [];
    const [one, two = one] = stances
      .map((panel) => frontMark(panel, limbJoint(otherSide(side), joint), leg))
      .filter((mark) => mark !== null);
    return [{ standing, other: one && two ? middle(one, two) : null, joint }];
  });
  return found.find(({ other }) => other !== null) ?? found[0] ?? null;
}

interface AtPassing {
  readonly step: Step;
  readonly side: Side;
  readonly passing: WalkPanel;
}

function remarkOn(
  { yardstick }: Study,
  { step, side, passing }: AtPassing,
  { rule, measured }: Asked,
): Remark[] {
  const { value, plusMinus } = measured;
  const broken = rule.limits.find((limit) => clearlyBeyond(value, plusMinus, limit.value));
  if (broken === undefined) return [];
  const panels = rule.id === "move" ? [step.contact, passing] : [passing];
  const sees = broken.level === "shows" ? "will" : "may";
  return [
    {
      kind: "remark",
      check: "weight-front",
      level: broken.level,
      yardstick,
      side,
      panels: panels.map(({ id }) => id),
      frames: panels.map(({ frame }) => frame),
      spots: panels.map(({ id }) => ({
        panel: id,
        view: "front",
        joints: ["left-hip", "right-hip"],
      })),
      measured,
      expected: { value: broken.value, plusMinus: 0, unit: "leg" },
      title: capital(`weight is not over the ${side} foot`),
      why: `${sentence({ step, side, passing }, rule.id, measured)}; up to ${percent({ value: broken.value, plusMinus: 0 })} passes. From the front the body ${sees} seem to fall off the leg it stands on.`,
      source: rule.source,
      beyond: (value - broken.value) / broken.value,
    },
  ];
}

function sentence({ step, side, passing }: AtPassing, id: FrontRule["id"], measured: Reading) {
  const amount = `${percent(measured)} of a leg`;
  const at = `At the ${sided(side, "passing")}, frame ${passing.frame}, the hips are`;
  switch (id) {
    case "distance":
      return `${at} ${amount} beside the ${side} ankle`;
    case "shift":
      return `${at} shifted ${amount} away from the ${side} foot, from the middle between both`;
    case "move":
      return `From frame ${step.contact.frame} to ${passing.frame} the hips move ${amount} away from the ${side} foot, which receives the weight`;
  }
}
