import { type JointName, limbJoint, otherSide } from "../../body";
import type { View } from "../../geometry";
import { rootSumSquare } from "../../geometry";
import type { Answer, NoReading } from "../answer";
import type { Trait, TraitReading } from "../by-pattern";
import { NEIGHBOURS } from "../methods/neighbouring-steps";
import { stepLength, stepWidth } from "../readings/between-feet";
import type { Step } from "../step";
import type { Study } from "../study";

const FEET: readonly JointName[] = ["left-ankle", "right-ankle"];

/** How long the step is. */
export const LENGTH_TRAITS: readonly Trait[] = [
  {
    name: "its length",
    subject: "length",
    what: "from foot to foot along the ground it has",
    sees: "one step is seen to reach farther than the other",
    near: NEIGHBOURS.length,
    by: "index",
    read: (study, step) => between(step, "side", stepLength(study, step)),
  },
];

/** How wide the step is. */
export const WIDTH_TRAITS: readonly Trait[] = [
  {
    name: "its width",
    what: "from foot to foot across the walk it has",
    sees: "the feet are seen to change their tracks",
    near: NEIGHBOURS.width,
    by: "difference",
    read: (study, step) => between(step, "front", stepWidth(study, step)),
  },
];

/** How far the hand of the rear foot's side is ahead of the other. */
export const ARM_TRAITS: readonly Trait[] = [
  {
    name: "the swing of the arms",
    what: "at the contact the rear foot's hand is ahead of the other by",
    below: "at the contact the rear foot's hand is behind the other by",
    sees: "the arms are seen to swing otherwise on this step",
    near: NEIGHBOURS.arms,
    by: "difference",
    read: armsApart,
  },
];

function between({ contact, next }: Step, view: View, read: Answer): TraitReading | NoReading {
  if (read.kind === "cannot-tell") return read;
  const { value, plusMinus, unit } = read;
  const panels = next === null ? [contact] : [contact, next];
  const spots = panels.map(({ id }) => ({ panel: id, view, joints: FEET }));
  return { kind: "read", reading: { value, plusMinus, unit }, panels, spots };
}

function armsApart(study: Study, { contact, weightOn }: Step): TraitReading | NoReading {
  const needs = `both wrists marked in the side view of the contact at frame ${contact.frame}`;
  if (weightOn === null) return { kind: "cannot-tell", needs };
  const joints = [otherSide(weightOn), weightOn].map((side) => limbJoint(side, "wrist"));
  const [ahead, behind] = joints.map((joint) => study.seen(contact, joint));
  if (ahead == null || behind == null) return { kind: "cannot-tell", needs };
  const plusMinus = rootSumSquare(ahead.plusMinus, behind.plusMinus);
  return {
    kind: "read",
    reading: { value: ahead.x - behind.x, plusMinus, unit: "leg" },
    panels: [contact],
    spots: [{ panel: contact.id, view: "side", joints }],
  };
}
