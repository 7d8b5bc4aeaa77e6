import type { StepPose } from "../../motion";
import { HIP_RULES, type HipRule } from "../checks/hip-rules";
import { NEIGHBOURS } from "../methods/neighbouring-steps";
import { patternFor } from "../pattern";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";
import { HIP_TRAITS } from "../traits/hip-traits";

/** Heights that a pose's hips may have beside the step's other poses. Leg lengths; open is infinite. */
export interface HipSpan {
  readonly low: number;
  readonly high: number;
}

/** What the hips of a pose are held to beside another pose's, whoever asks for it. Leg lengths. */
export type HeightRule = Pick<HipRule, "subject" | "against" | "stays" | "limit">;

/** How far inside its span a pose is put, leg lengths: more than a drawing's ± of 0.5 %. */
const INSIDE = 0.01;

/**
 * The rules of hip order that a step is held to: by trade and life those that hold for any walk, else as high
 * over its contact as in the step it goes by, give or take what neighbouring steps differ by. The step that
 * the others go by is held to none.
 */
export function hipRules(study: Study, step: Step): readonly HeightRule[] {
  const { walk, common, pattern, yardstick } = study;
  if (pattern === null) {
    return HIP_RULES[common].filter(({ topic }) => topic === null || !isQuiet(walk.kind, topic));
  }
  const rule = pattern.kind === "pattern" ? patternFor(pattern, study, step) : null;
  if (pattern.kind === "cannot-tell" || rule === null) return [];
  return HIP_TRAITS.flatMap(({ pose, topic }): HeightRule[] => {
    const base = heightOf(pattern.study, rule, "contact");
    const top = pose === undefined ? null : heightOf(pattern.study, rule, pose);
    const quiet = topic !== undefined && isQuiet(walk.kind, topic, yardstick);
    if (pose === undefined || base === null || top === null || quiet) return [];
    const about = { subject: pose, against: "contact" } as const;
    return [
      { ...about, stays: "above", limit: top - base - AS_NEAR },
      { ...about, stays: "below", limit: top - base + AS_NEAR },
    ];
  });
}

/** Nearer than this passes as the same height, leg lengths. */
const AS_NEAR = Math.min(...NEIGHBOURS.hips.grades.map(({ value }) => value));

/** What the step's other poses leave open to one of its poses; null where they contradict each other. */
export function hipSpan(study: Study, step: Step, pose: StepPose): HipSpan | null {
  const bounds = hipRules(study, step).flatMap((rule) => boundsOf(study, step, pose, rule));
  const low = Math.max(Number.NEGATIVE_INFINITY, ...bounds.map((bound) => bound.low));
  const high = Math.min(Number.POSITIVE_INFINITY, ...bounds.map((bound) => bound.high));
  return low <= high ? { low, high } : null;
}

/** What one rule leaves open to the pose. */
export function boundsOf(study: Study, step: Step, pose: StepPose, rule: HeightRule): HipSpan[] {
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
