import type { StepPose } from "../../motion";
import { HIP_RULES, type HipRule } from "../checks/hip-rules";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";

/** Heights that a pose's hips may have beside the step's other poses. Leg lengths; open is infinite. */
export interface HipSpan {
  readonly low: number;
  readonly high: number;
}

/** How far inside its span a pose is put, leg lengths: more than a drawing's ± of 0.5 %. */
const INSIDE = 0.01;

/** The rules of hip order that this walk is held to. */
export function hipRules({ walk, common }: Study): readonly HipRule[] {
  return HIP_RULES[common].filter(({ topic }) => topic === null || !isQuiet(walk.kind, topic));
}

/** What the step's other poses leave open to one of its poses; null where they contradict each other. */
export function hipSpan(study: Study, step: Step, pose: StepPose): HipSpan | null {
  const bounds = hipRules(study).flatMap((rule) => boundsOf(study, step, pose, rule));
  const low = Math.max(Number.NEGATIVE_INFINITY, ...bounds.map((bound) => bound.low));
  const high = Math.min(Number.POSITIVE_INFINITY, ...bounds.map((bound) => bound.high));
  return low <= high ? { low, high } : null;
}

/** What one rule leaves open to the pose. */
export function boundsOf(study: Study, step: Step, pose: StepPose, rule: HipRule): HipSpan[] {
  if (rule.subject !== pose && rule.against !== pose) return [];
  const judged = rule.subject === pose;
  const other = heightOf(study, step, judged ? rule.against : rule.subject);
  if (other === null) return [];
  const edge = judged ? other + rule.limit : other - rule.limit;
  const above = judged === (rule.stays === "above");
  return above
    ? [{ low: edge, high: Number.POSITIVE_INFINITY }]
    : [{ low: Number.NEGATIVE_INFINITY, high: edge }];
}

/** The height nearest to where the hips are that lies well inside a span; its middle where it is narrow. */
export function inside(height: number, { low, high }: HipSpan): number {
  if (high - low < 2 * INSIDE) return (low + high) / 2;
  return Math.min(high - INSIDE, Math.max(low + INSIDE, height));
}

/** Height of a pose's hips, or null where it is not drawn or not marked. */
export function heightOf(study: Study, step: Step, pose: StepPose): number | null {
  const panel = step[pose];
  if (panel === null) return null;
  const height = study.hipOf(panel);
  return height.kind === "value" ? height.value : null;
}
