import type { Trait } from "../by-pattern";
import type { Remark } from "../finding";
import { patternFor } from "../pattern";
import type { Step } from "../step";
import type { Study } from "../study";
import { WEIGHT_FRONT_TRAITS, WEIGHT_SIDE_TRAITS } from "../traits/weight-traits";
import type { WalkPanel } from "../walk";
import { percent, sided } from "../words";
import { marksMoved, moveBody } from "./move-pose";
import type { Proposal } from "./proposal";

/**
 * Weight that is not where the step has it that this one goes by: the body shifted at its passing until it is;
 * from the front also at its contact, where it has to sway by as much from there. Feet kept and knees solved.
 */
export function asInItsRule(study: Study, step: Step, check: Remark["check"]): readonly Proposal[] {
  const { contact, passing } = step;
  if (passing === null) return [];
  if (check === "weight-side") {
    const [by] = WEIGHT_SIDE_TRAITS.map((trait) => missing(study, step, trait));
    return by == null ? [] : [shifted(study, step, [{ panel: passing, forward: by }])];
  }
  const [shift, sway] = WEIGHT_FRONT_TRAITS.map((trait) => missing(study, step, trait));
  const right = step.weightOn === "right" ? 1 : -1; // both are counted toward the foot that carries
  const back = (by: number) => ({ panel: contact, aside: -right * by });
  const over = shift == null ? null : { panel: passing, aside: right * shift };
  const ways = [
    over === null ? [] : [over],
    sway == null ? [] : [back(sway)],
    over === null || shift == null || sway == null ? [] : [over, back(sway - shift)],
  ];
  return ways.flatMap((moves) => (moves.length === 0 ? [] : [shifted(study, step, moves)]));
}

/** How much more of it the step is to have. Leg lengths; null where either step does not say. */
function missing(study: Study, step: Step, trait: Trait): number | null {
  const { pattern } = study;
  const rule = pattern?.kind === "pattern" ? patternFor(pattern, study, step) : null;
  if (pattern?.kind !== "pattern" || rule === null) return null;
  const [here, there] = [trait.read(study, step), trait.read(pattern.study, rule)];
  return here.kind === "read" && there.kind === "read"
    ? there.reading.value - here.reading.value
    : null;
}

/** A panel whose body goes so far, leg lengths: along the walk, and to the walker's right. */
interface Move {
  readonly panel: WalkPanel;
  readonly forward?: number;
  readonly aside?: number;
}

function shifted({ leg }: Study, { weightOn }: Step, moves: readonly Move[]): Proposal {
  const units = leg.kind === "value" ? leg.value : Number.NaN;
  const changes = moves.flatMap(({ panel, forward = 0, aside = 0 }) => {
    // The walker's right lies to the left of the front view.
    const by = { forward: forward * units, up: 0, aside: -aside * units };
    return marksMoved(panel, moveBody(panel, by).marks);
  });
  const told = moves.map(({ panel, forward = 0, aside = 0 }) => {
    const by = forward === 0 ? aside : forward;
    const ways = forward === 0 ? (["to the right", "to the left"] as const) : WAYS;
    const amount = percent({ value: by, plusMinus: 0 });
    return `of the ${sided(weightOn, panel.pose)} ${by > 0 ? ways[0] : ways[1]} by ${amount} of a leg`;
  });
  return { title: `Shift the body ${told.join(", and ")}`, changes };
}

const WAYS = ["forward", "back"] as const;
