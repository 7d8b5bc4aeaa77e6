import { limbJoint, otherSide, type Side } from "../../body";
import { rootSumSquare } from "../../geometry";
import type { NoReading } from "../answer";
import type { Trait, TraitReading } from "../by-pattern";
import { nextContact, whoseStep } from "../checks/step-words";
import { footPoints, isWholeFoot, lowest, needsFoot } from "../foot";
import { NEIGHBOURS } from "../methods/neighbouring-steps";
import { footPitch } from "../readings/joint-angles";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";

/** How the foot that carries lands, lies and leaves. */
export const FOOT_ROLL_TRAITS: readonly Trait[] = [
  {
    name: "the landing of the foot",
    subject: "landing",
    what: "at the contact the front toe is over its heel by",
    below: "at the contact the front toe is under its heel by",
    sees: "one foot is seen to land otherwise than the other",
    near: NEIGHBOURS.landing,
    by: "difference",
    read: (study, { contact, weightOn }) => toeOverHeel(study, contact, weightOn),
  },
  {
    name: "the standing foot",
    subject: "standing",
    what: "at passing the foot that carries pitches by",
    sees: "one foot is seen to stand otherwise than the other",
    near: NEIGHBOURS.flat,
    by: "difference",
    read: pitchAtPassing,
  },
  {
    name: "the leaving of the foot",
    subject: "leaving",
    what: "as the foot leaves, at the next contact, its toe is over its heel by",
    below: "as the foot leaves, at the next contact, its toe is under its heel by",
    sees: "one foot is seen to leave the ground otherwise than the other",
    near: NEIGHBOURS.leaving,
    by: "difference",
    read: (study, { contact, next, weightOn }) =>
      next === null
        ? { kind: "cannot-tell", needs: nextContact(weightOn, contact) }
        : toeOverHeel(study, next, weightOn),
  },
];

/** How high the swinging foot passes. */
export const CLEARANCE_TRAITS: readonly Trait[] = [
  {
    name: "the lift of the foot",
    what: "the swinging foot passes over the ground by",
    sees: "one foot is seen to be lifted otherwise than the other",
    near: NEIGHBOURS.clearance,
    by: "difference",
    read: lifted,
  },
];

function toeOverHeel(study: Study, panel: WalkPanel, side: Side | null): TraitReading | NoReading {
  if (side === null) return { kind: "cannot-tell", needs: "to know whose weight the step carries" };
  const points = footPoints(panel, side, study.leg);
  const [heel, ...front] = points;
  const tip = front.at(-1);
  if (!isWholeFoot(points) || heel === undefined || tip === undefined) return needs(side);
  const plusMinus = rootSumSquare(heel.plusMinus, tip.plusMinus);
  const joints = [limbJoint(side, heel.joint), limbJoint(side, tip.joint)];
  return {
    kind: "read",
    reading: { value: tip.y - heel.y, plusMinus, unit: "leg" },
    panels: [panel],
    spots: [{ panel: panel.id, view: "side", joints }],
  };
}

function pitchAtPassing(_: Study, { passing, weightOn }: Step): TraitReading | NoReading {
  if (passing === null || weightOn === null) return noPassing(weightOn);
  const pitch = footPitch(passing.marks.side, weightOn);
  if (pitch.kind === "cannot-tell") return needs(weightOn);
  const joints = [limbJoint(weightOn, "heel"), limbJoint(weightOn, "toe")];
  const { value, plusMinus, unit } = pitch;
  return {
    kind: "read",
    reading: { value, plusMinus, unit },
    panels: [passing],
    spots: [{ panel: passing.id, view: "side", joints }],
  };
}

function lifted(study: Study, { passing, weightOn }: Step): TraitReading | NoReading {
  if (passing === null || weightOn === null) return noPassing(weightOn);
  const side = otherSide(weightOn);
  const low = lowest(footPoints(passing, side, study.leg));
  if (low === null) return needs(side);
  return {
    kind: "read",
    reading: { value: low.y, plusMinus: low.plusMinus, unit: "leg" },
    panels: [passing],
    spots: [{ panel: passing.id, view: "side", joints: [limbJoint(side, low.joint)] }],
  };
}

function needs(side: Side): NoReading {
  return { kind: "cannot-tell", needs: needsFoot(side) };
}

function noPassing(side: Side | null): NoReading {
  return { kind: "cannot-tell", needs: `the passing of ${whoseStep(side)} drawn` };
}
