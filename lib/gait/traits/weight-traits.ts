import { limbJoint } from "../../body";
import { rootSumSquare } from "../../geometry";
import type { NoReading } from "../answer";
import type { Trait, TraitReading } from "../by-pattern";
import { whoseStep } from "../checks/step-words";
import { hipsAlong, ONE_HIP_ALONG } from "../hips-along";
import { NEIGHBOURS } from "../methods/neighbouring-steps";
import { askedAcross } from "../readings/asked-across";
import type { Step } from "../step";
import type { Study } from "../study";

/** Where the hips stand over the foot that carries, from the side. */
export const WEIGHT_SIDE_TRAITS: readonly Trait[] = [
  {
    name: "the weight over the foot",
    what: "the hips at passing are ahead of the standing ankle by",
    below: "the hips at passing are behind the standing ankle by",
    sees: "the weight is seen to lie elsewhere over this foot",
    near: NEIGHBOURS.ahead,
    by: "difference",
    read: ahead,
  },
];

/** Where they stand and go over it, from the front. */
export const WEIGHT_FRONT_TRAITS: readonly Trait[] = [
  {
    name: "the sideways shift",
    what: "at passing the hips are shifted toward the standing foot by",
    below: "at passing the hips are shifted away from the standing foot by",
    sees: "from the front the body is seen to lean over one foot more than over the other",
    near: NEIGHBOURS.shift,
    by: "difference",
    read: (study, step) => across(study, step, "shift"),
  },
  {
    name: "the sway",
    what: "from contact to passing the hips move toward the foot that receives them by",
    below: "from contact to passing the hips move away from the foot that receives them by",
    sees: "from the front the body is seen to sway to one side more than to the other",
    near: NEIGHBOURS.move,
    by: "difference",
    read: (study, step) => across(study, step, "move"),
  },
];

function across(study: Study, step: Step, id: "shift" | "move"): TraitReading | NoReading {
  const { weightOn: side, passing, contact } = step;
  const needs = `the hips and feet marked in the front view at contact and passing of ${whoseStep(side)}`;
  if (passing === null || side === null) return { kind: "cannot-tell", needs };
  const found = askedAcross(study, step, side, passing).find(({ rule }) => rule.id === id);
  if (found === undefined) return { kind: "cannot-tell", needs };
  const { measured } = found; // away from the foot is above 0 there
  const panels = id === "move" ? [contact, passing] : [passing];
  return {
    kind: "read",
    reading: { ...measured, value: -measured.value },
    panels,
    spots: panels.map((panel) => ({
      panel: panel.id,
      view: "front",
      joints: ["left-hip", "right-hip"],
    })),
  };
}

function ahead(study: Study, step: Step): TraitReading | NoReading {
  const { weightOn: side, passing } = step;
  const needs = `the hips and the standing ankle marked in the side view at the passing of ${whoseStep(side)}`;
  if (passing === null || side === null) return { kind: "cannot-tell", needs };
  const hips = hipsAlong(study, passing, ONE_HIP_ALONG.passing);
  const joint = limbJoint(side, "ankle");
  const ankle = study.seen(passing, joint);
  if (hips === null || ankle === null) return { kind: "cannot-tell", needs };
  const plusMinus = rootSumSquare(hips.plusMinus, ankle.plusMinus);
  return {
    kind: "read",
    reading: { value: hips.x - ankle.x, plusMinus, unit: "leg" },
    panels: [passing],
    spots: [{ panel: passing.id, view: "side", joints: [...hips.joints, joint] }],
  };
}
