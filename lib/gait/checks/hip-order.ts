import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import type { StepPose } from "../../motion";
import { clearlyBeyond } from "../beyond";
import { byPattern } from "../by-pattern";
import type { CannotTell, Finding, Reading, Remark, Spot } from "../finding";
import { READS_AS_EQUAL, VAGUE_BEYOND } from "../methods/hip-order";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import { heightsOf, type PosedHips } from "../step-heights";
import type { Study } from "../study";
import { HIP_TRAITS } from "../traits/hip-traits";
import type { CommonYardstick } from "../walk";
import { capital, listed, percent, sided } from "../words";
import { HIP_RULES, type HipRule } from "./hip-rules";

/**
 * Where a limit is 0 there is nothing to take a multiple of, so ranking counts in these instead.
 * Leg lengths: 1 %, the ± within which a drawing is read.
 */
const RANKED_BY = 0.01;

/**
 * Do the hips sink and rise in the order that the yardstick expects? Trade: down below contact,
 * contact below passing, passing below up. Life: passing above the down, not clearly below the
 * contact, and the down not clearly above the contact; the up may stand anywhere.
 *
 * Shapes:  a remark for each pair out of order; else one answer a step
 * Units:   leg lengths
 * Errors:  none; a pose or hip that is missing, or marked too vaguely, answers "cannot-tell"
 * Source:  beside each rule, in `hip-rules`
 */
export function hipOrder(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "hip-order", study.yardstick)) return [];
  if (study.pattern !== null) return byPattern(study, study.pattern, "hip-order", HIP_TRAITS);
  if (steps.length === 0) return [cannotTell(null, [], "a contact and the poses that follow it")];
  const read = study.inSteps(risesIn);
  const rules = rulesOf(study);
  return gathered(steps, (step, at) => {
    const others = read.filter(({ side }) => side !== null && side !== step.weightOn);
    const besides = rules.map((_, nth) => others.find(({ by }) => by[nth] != null) ?? null);
    return study.onceIn(step, judgeStep, read[at] as Rises, ...besides);
  });
}

/** The rules that a kind of walk is asked. */
function rulesOf({ walk, common }: Study): readonly HipRule[] {
  return HIP_RULES[common].filter(({ topic }) => topic === null || !isQuiet(walk.kind, topic));
}

/** How far one pose's hips stand over another's. */
interface Rise {
  readonly measured: Reading;
  readonly subject: PosedHips;
  readonly against: PosedHips;
}

/** What a step's hips do by each of the rules; null where it is not to be read. */
interface Rises {
  readonly side: Step["weightOn"];
  readonly by: readonly (Rise | null)[];
}

function risesIn(study: Study, step: Step): Rises {
  return { side: step.weightOn, by: rulesOf(study).map((rule) => rise(study, step, rule)) };
}

/** @param besides for each rule a step on the other foot that a remark tells beside */
function judgeStep(
  study: Study,
  step: Step,
  { by }: Rises,
  ...besides: readonly (Rises | null)[]
): Finding[] {
  const rules = rulesOf(study);
  const remarks = rules
    .map((rule, nth) => {
      const beside = besides[nth] ?? null;
      return judgeRule(study, { step, rule, found: by[nth] ?? null, nth, beside });
    })
    .filter((remark) => remark !== null);
  const needs = (isWhole(by) ? null : missing(study, step, rules)) ?? moreExactly(step, rules, by);
  const panels = step.panels.map(({ id }) => id);
  if (needs !== null) return [...remarks, cannotTell(step, panels, needs)];
  if (remarks.length > 0) return remarks;
  const measured = by[0]?.measured ?? null;
  return [{ kind: "sound", check: "hip-order", side: step.weightOn, panels, measured }];
}

/** A step's hips by one rule, and a step on the other foot by the same. */
interface Judged {
  readonly step: Step;
  readonly rule: HipRule;
  readonly found: Rise | null;
  readonly nth: number;
  readonly beside: Rises | null;
}

function judgeRule(study: Study, judged: Judged): Remark | null {
  const { step, rule, found } = judged;
  if (found === null) return null;
  const { measured, subject, against } = found;
  const sign = rule.stays === "below" ? 1 : -1;
  const limit = sign * rule.limit + READS_AS_EQUAL;
  if (!clearlyBeyond(sign * measured.value, measured.plusMinus, limit)) return null;
  const posed = [subject, against].toSorted((a, b) => a.panel.frame - b.panel.frame);
  return {
    kind: "remark",
    check: "hip-order",
    level: "shows",
    yardstick: study.yardstick,
    side: step.weightOn,
    panels: posed.map(({ panel }) => panel.id),
    frames: posed.map(({ panel }) => panel.frame),
    spots: posed.map(spotOf),
    measured,
    expected: { value: rule.limit, plusMinus: 0, unit: "leg" },
    title: capital(`${sided(step.weightOn, "step")} ${rule.title}`),
    why: sentence(study, judged, measured),
    source: rule.source,
    beyond: (sign * (measured.value - rule.limit)) / (Math.abs(rule.limit) || RANKED_BY),
  };
}

/** How far the subject's hips stand over the other pose's, or null while one is not to be read. */
function rise(study: Study, step: Step, { subject, against }: HipRule): Rise | null {
  const pair = [step[subject], step[against]].filter((panel) => panel !== null);
  const [judged, by] = pair.length < 2 ? [] : heightsOf(study, pair);
  if (judged === undefined || by === undefined) return null;
  const measured: Reading = {
    value: judged.value - by.value,
    plusMinus: rootSumSquare(judged.plusMinus, by.plusMinus),
    unit: "leg",
  };
  return { measured, subject: judged, against: by };
}

function spotOf({ panel, view, joints }: PosedHips): Spot {
  return { panel: panel.id, view, joints };
}

function sentence(study: Study, { step, rule, nth, beside }: Judged, measured: Reading): string {
  const here = `At the ${sided(step.weightOn, rule.subject)} the hips ${standing(measured)} the ${rule.against}`;
  const asked = `${WHO_HAS_THEM[study.common]} ${allowed(rule)}`;
  const partner = beside?.by[nth] ?? null;
  const also =
    partner === null ? "" : ` On the ${beside?.side} step they ${standing(partner.measured)} it.`;
  return `${here}; ${asked}: ${rule.sees}.${also}`;
}

const WHO_HAS_THEM: Readonly<Record<CommonYardstick, string>> = {
  trade: "the trade has them",
  life: "people have them",
};

function standing(measured: Reading): string {
  return measured.value < 0
    ? `lie ${percent(measured)} of a leg below`
    : `stand ${percent(measured)} of a leg above`;
}

function allowed({ stays, limit }: HipRule): string {
  if (limit === 0) return `${stays} it`;
  const most = percent({ value: limit, plusMinus: 0 });
  return `at most ${most} ${limit < 0 ? "below" : "above"} it`;
}

/** Whether the step was read by every rule, so that nothing is missing. */
function isWhole(by: Rises["by"]): boolean {
  return by.every((rise) => rise !== null && Number.isFinite(rise.measured.value));
}

/** What keeps the step from a whole answer, as a phrase after "needs"; null when nothing does. */
function missing(study: Study, step: Step, rules: readonly HipRule[]): string | null {
  if (study.leg.kind === "cannot-tell") return study.leg.needs;
  const poses = new Set<StepPose>(gathered(rules, ({ subject, against }) => [against, subject]));
  const undrawn = [...poses].filter((pose) => step[pose] === null);
  const unmarked = [...poses].filter((pose) => {
    const panel = step[pose];
    return panel !== null && study.hipOf(panel).kind === "cannot-tell";
  });
  const whose = sided(step.weightOn, "step");
  const parts: string[] = [];
  if (undrawn.length > 0) parts.push(`the ${listed(undrawn)} of the ${whose} drawn`);
  if (unmarked.length > 0) parts.push(`the hips marked at the ${listed(unmarked)} of the ${whose}`);
  return parts.length === 0 ? null : parts.join(", and ");
}

/** Which hips are marked too vaguely to be called in order, as a phrase after "needs"; null where none. */
function moreExactly(step: Step, rules: readonly HipRule[], by: Rises["by"]): string | null {
  const vague = rules.filter((rule, nth) => {
    const found = by[nth] ?? null;
    if (found === null) return false;
    const { value, plusMinus } = found.measured;
    const sign = rule.stays === "below" ? 1 : -1;
    const broken = clearlyBeyond(sign * value, plusMinus, sign * rule.limit + READS_AS_EQUAL);
    const inOrder = sign * value + plusMinus <= sign * rule.limit;
    return !(broken || inOrder || plusMinus <= VAGUE_BEYOND);
  });
  if (vague.length === 0) return null;
  const poses = new Set<StepPose>(gathered(vague, ({ subject, against }) => [against, subject]));
  return `the hips marked more exactly at the ${listed([...poses])} of the ${sided(step.weightOn, "step")}`;
}

function cannotTell(step: Step | null, panels: readonly string[], needs: string): CannotTell {
  return { kind: "cannot-tell", check: "hip-order", side: step?.weightOn ?? null, panels, needs };
}
