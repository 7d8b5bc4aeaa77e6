import type { Side } from "../../body";
import { gathered } from "../../gathered";
import { clearlyBeyond, greatestFirst } from "../beyond";
import { byPattern } from "../by-pattern";
import type { Finding, Level, Reading, Remark } from "../finding";
import { FRONT_RULES, type FrontRule } from "../methods/weight-front";
import { isQuiet } from "../quiet";
import { type Asked, askedAcross } from "../readings/asked-across";
import type { Step } from "../step";
import type { Study } from "../study";
import { WEIGHT_FRONT_TRAITS } from "../traits/weight-traits";
import type { WalkPanel } from "../walk";
import { capital, percent, sided } from "../words";
import { cannotTell, NEEDS_A_SIDE, NEEDS_A_STEP, sound } from "./answers";
import { whoseStep } from "./step-words";

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
  if (study.pattern !== null) {
    return byPattern(study, study.pattern, "weight-front", WEIGHT_FRONT_TRAITS);
  }
  if (steps.length === 0) {
    return [cannotTell({ check: "weight-front", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  return gathered(study.inSteps(judge), (told) => told);
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
  const asked = askedAcross(study, step, weightOn, passing);
  const remarks = gathered(asked, (one) =>
    remarkOn(study, { step, side: weightOn, passing }, one),
  ).toSorted((a, b) => RANK[b.level] - RANK[a.level] || greatestFirst(a.beyond, b.beyond));
  const [gravest] = remarks;
  const open = asked.length < FRONT_RULES.length ? [cannotTell(about, NEEDS)] : [];
  if (gravest !== undefined) return [gravest, ...open];
  if (open.length > 0) return open;
  return [sound(about, asked.find(({ rule }) => rule.id === "shift")?.measured ?? null)];
}

const NEEDS = "the hips and feet marked in the front view at contact and passing";
const RANK: Readonly<Record<Level, number>> = { shows: 2, "may-show": 1, tidy: 0 };

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
