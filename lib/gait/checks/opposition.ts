import { limbJoint, otherSide, type Side } from "../../body";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond } from "../beyond";
import { byPattern } from "../by-pattern";
import type { Finding, Reading, Remark } from "../finding";
import { feetAlong } from "../foot";
import { ARM_AHEAD, OPPOSITION_SOURCE } from "../methods/opposition";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";
import { ARM_TRAITS } from "../traits/step-traits";
import type { WalkPanel } from "../walk";
import { capital, percent } from "../words";
import { cannotTell, NEEDS_A_SIDE, NEEDS_A_STEP, sound } from "./answers";

/**
 * Do the arms swing against the legs? At a contact the hand ahead belongs to the rear foot's side. Arms
 * that hang side by side are not judged to swing at all.
 *
 * Shapes:  one answer for each step's contact; a remark's side is that of the foot and arm ahead
 * Units:   leg lengths along the walk, forward positive
 * Errors:  none; without both wrists it answers "cannot-tell"
 * Source:  beside the limit, in its method
 */
export function opposition(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "opposition")) return [];
  if (study.pattern !== null) return byPattern(study, study.pattern, "opposition", ARM_TRAITS);
  if (steps.length === 0) {
    return [cannotTell({ check: "opposition", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  return study.inSteps(judge);
}

function judge(study: Study, { contact, weightOn }: Step): Finding {
  const side = footAhead(study, contact) ?? weightOn;
  const about = { check: "opposition", side, panels: [contact] } as const;
  if (study.leg.kind === "cannot-tell") return cannotTell(about, study.leg.needs);
  if (side === null) return cannotTell(about, NEEDS_A_SIDE);
  const near = study.seen(contact, limbJoint(side, "wrist"));
  const far = study.seen(contact, limbJoint(otherSide(side), "wrist"));
  if (near === null || far === null) {
    const needs = `both wrists marked in the side view of the contact at frame ${contact.frame}`;
    return cannotTell(about, needs);
  }
  const plusMinus = rootSumSquare(near.plusMinus, far.plusMinus);
  const measured: Reading = { value: near.x - far.x, plusMinus, unit: "leg" };
  if (!clearlyBeyond(measured.value, plusMinus, ARM_AHEAD)) return sound(about, measured);
  return remarkOn(study, contact, side, measured);
}

/** The foot that stands ahead by more than the marks leave open; null where they do not tell. */
function footAhead({ leg }: Study, contact: WalkPanel): Side | null {
  const feet = feetAlong(contact, leg);
  if (feet === null) return null;
  const { left, right } = feet;
  const plusMinus = rootSumSquare(left.plusMinus, right.plusMinus);
  if (clearlyBeyond(left.x - right.x, plusMinus, 0)) return "left";
  return clearlyBeyond(right.x - left.x, plusMinus, 0) ? "right" : null;
}

function remarkOn({ yardstick }: Study, contact: WalkPanel, side: Side, measured: Reading): Remark {
  const joints = [limbJoint(side, "wrist"), limbJoint(side, "toe")];
  return {
    kind: "remark",
    check: "opposition",
    level: "may-show",
    yardstick,
    side,
    panels: [contact.id],
    frames: [contact.frame],
    spots: [{ panel: contact.id, view: "side", joints }],
    measured,
    expected: { value: ARM_AHEAD, plusMinus: 0, unit: "leg" },
    title: capital(`${side} arm swings with the ${side} leg`),
    why: `At the contact, frame ${contact.frame}, the ${side} foot is ahead, and so is the ${side} hand, by ${percent(measured)} of a leg; up to ${percent({ value: ARM_AHEAD, plusMinus: 0 })} passes as hanging. People have the other hand ahead, so the walk may look stiff or out of step with itself.`,
    source: OPPOSITION_SOURCE,
    beyond: (measured.value - ARM_AHEAD) / ARM_AHEAD,
  };
}
