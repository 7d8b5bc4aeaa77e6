import type { StepPose } from "../../motion";
import type { Remark } from "../finding";
import type { Step } from "../step";
import type { Study } from "../study";
import { percent, sided } from "../words";
import { boundsOf, heightOf, hipRules, hipSpan, inside } from "./hip-span";
import { moveBody } from "./move-pose";
import { movedPanel, type Proposal } from "./proposal";

/**
 * Hips out of order: the body raised or lowered into the span that the step's other poses leave, feet
 * kept and knees solved; of the two poses compared, the judged one first.
 */
export function fixHips(study: Study, { panels }: Remark): readonly Proposal[] {
  const ways = study.steps.flatMap((step) =>
    hipRules(study, step).flatMap((rule) => {
      const pair = [step[rule.subject], step[rule.against]];
      if (!pair.every((panel) => panel !== null && panels.includes(panel.id))) return [];
      return [rule.subject, rule.against].flatMap((pose) => {
        const spans = [hipSpan(study, step, pose), ...boundsOf(study, step, pose, rule)];
        return spans.flatMap((span) => {
          const height = heightOf(study, step, pose);
          if (span === null || height === null) return [];
          return raised(study, step, pose, inside(height, span) - height);
        });
      });
    }),
  );
  // Two rules for one pair of poses may leave the same room.
  return ways.filter(({ title }, nth) => ways.findIndex((one) => one.title === title) === nth);
}

function raised(study: Study, step: Step, pose: StepPose, by: number): Proposal[] {
  const panel = step[pose];
  const { leg } = study;
  if (panel === null || leg.kind === "cannot-tell" || by === 0) return [];
  const moved = moveBody(panel, { forward: 0, up: by * leg.value, aside: 0 });
  const amount = percent({ value: by, plusMinus: 0 });
  const title = `${by > 0 ? "Raise" : "Lower"} the ${sided(step.weightOn, pose)} by ${amount} of a leg`;
  return [movedPanel(panel, moved, title, leg)];
}
