import { centreOfMass, limbJoint, SIDES, sideToGround } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { byPattern } from "../by-pattern";
import type { Finding } from "../finding";
import { feetAlong, footPoints } from "../foot";
import { hipsAlong, ONE_HIP_ALONG } from "../hips-along";
import {
  AHEAD,
  CONTACT_SOURCE,
  PASSING_SOURCE,
  PAST_THE_END,
  REST_HANGS_WITHIN,
  SHARE_NEEDED,
  STAND_SOURCE,
} from "../methods/weight-side";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";
import { WEIGHT_SIDE_TRAITS } from "../traits/weight-traits";
import type { WalkPanel } from "../walk";
import { sided } from "../words";
import { cannotTell, NEEDS_A_SIDE, NEEDS_A_STEP, sound } from "./answers";
import { whoseStep } from "./step-words";
import { bound, weightRemark, worst } from "./weight-bounds";

/**
 * Is the weight over what it stands on, seen from the side? At passing the hips are between heel and
 * toe of the standing foot and a little ahead of its ankle; at contact they are between the feet; on
 * the stand the centre of mass is over the feet.
 *
 * Shapes:  an answer for the contact and the passing of each step, and for each stand
 * Units:   leg lengths along the walk, forward positive
 * Errors:  none; marks that are missing answer "cannot-tell"
 * Source:  beside each limit
 */
export function weightSide(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "weight-side")) return [];
  const stands = walk.panels.filter(({ pose }) => pose === "stand");
  const standing = stands.map((panel) => study.once(panel, atStand));
  if (study.pattern !== null) {
    return [...standing, ...byPattern(study, study.pattern, "weight-side", WEIGHT_SIDE_TRAITS)];
  }
  if (steps.length === 0) {
    const about = { check: "weight-side", side: null, panels: [] } as const;
    return [...standing, cannotTell(about, NEEDS_A_STEP)];
  }
  return [...standing, ...gathered(study.inSteps(inStep), (told) => told)];
}

function inStep(study: Study, step: Step): Finding[] {
  return [atContact(study, step), atPassing(study, step)];
}

function atPassing(study: Study, step: Step): Finding {
  const { weightOn: side, passing } = step;
  const about = {
    check: "weight-side",
    side,
    panels: passing === null ? step.panels : [passing],
  } as const;
  if (study.leg.kind === "cannot-tell") return cannotTell(about, study.leg.needs);
  if (side === null) return cannotTell(about, NEEDS_A_SIDE);
  if (passing === null) return cannotTell(about, `the passing of ${whoseStep(side)} drawn`);
  const hips = hipsAlong(study, passing, ONE_HIP_ALONG.passing);
  const mark = (joint: "ankle" | "heel" | "toe") => {
    const found = study.seen(passing, limbJoint(side, joint));
    if (found === null) return null;
    return { x: found.x, y: found.y, plusMinus: found.plusMinus, joint: limbJoint(side, joint) };
  };
  const [ankle, heel, toe] = [mark("ankle"), mark("heel"), mark("toe")];
  if (hips === null || (ankle === null && (heel === null || toe === null))) {
    const needs = `the hips and the ${side} ankle, or heel and toe, marked in the side view at the passing of ${whoseStep(side)}`;
    return cannotTell(about, needs);
  }
  const bounds = [
    ...(ankle === null
      ? []
      : [bound(hips, ankle, 1, AHEAD.from), bound(hips, ankle, -1, AHEAD.to)]),
    ...(heel === null ? [] : [bound(hips, heel, 1, PAST_THE_END)]),
    ...(toe === null ? [] : [bound(hips, toe, -1, PAST_THE_END)]),
  ];
  const found = worst(bounds);
  if (found === null) return sound(about, bounds[0]?.measured ?? null);
  return weightRemark(study, passing, side, {
    found,
    joints: [...hips.joints, found.joint],
    what: `At the ${sided(side, "passing")}, frame ${passing.frame}, the hips are`,
    asks:
      found.limit === PAST_THE_END
        ? "people have them between its heel and toe"
        : `people have them ${100 * AHEAD.from} to ${100 * AHEAD.to} % ahead of it`,
    source: PASSING_SOURCE,
  });
}

function atContact(study: Study, step: Step): Finding {
  const { weightOn: side, contact } = step;
  const about = { check: "weight-side", side, panels: [contact] } as const;
  if (study.leg.kind === "cannot-tell") return cannotTell(about, study.leg.needs);
  const hips = hipsAlong(study, contact, ONE_HIP_ALONG.contact);
  const feet = feetAlong(contact, study.leg);
  if (hips === null || feet === null) {
    const needs = `the hips and both feet marked in the side view at the contact of ${whoseStep(side)}`;
    return cannotTell(about, needs);
  }
  const [rear, front] = SIDES.map((foot) => {
    const { x, plusMinus } = feet[foot];
    return { x, plusMinus, joint: limbJoint(foot, feet.joint) };
  }).toSorted((a, b) => a.x - b.x);
  if (rear === undefined || front === undefined) return sound(about, null);
  const found = worst([bound(hips, rear, 1, PAST_THE_END), bound(hips, front, -1, PAST_THE_END)]);
  if (found === null) return sound(about, bound(hips, rear, 1, PAST_THE_END).measured);
  return weightRemark(study, contact, side, {
    found,
    joints: [...hips.joints, found.joint],
    what: `At the ${sided(side, "contact")}, frame ${contact.frame}, the hips are`,
    asks: "people have them between their feet",
    source: CONTACT_SOURCE,
  });
}

function atStand(study: Study, stand: WalkPanel): Finding {
  const about = { check: "weight-side", side: null, panels: [stand] } as const;
  const { leg } = study;
  if (leg.kind === "cannot-tell") return cannotTell(about, leg.needs);
  const mass = centreOfMass(stand.marks.side, { load: study.walk.load ?? 0 });
  const soles = gathered(SIDES, (side) =>
    footPoints(stand, side, leg).map((point) => ({
      ...point,
      joint: limbJoint(side, point.joint),
    })),
  ).toSorted((a, b) => a.x - b.x);
  const [rear] = soles;
  const front = soles.at(-1);
  const whole = mass !== null && mass.share >= SHARE_NEEDED;
  if (!whole || rear === undefined || front === undefined || rear === front) {
    return cannotTell(about, "the head, neck or shoulders, legs and feet marked on the stand");
  }
  const weight = {
    x: sideToGround(mass, { place: 0, legLength: leg.value }).x,
    plusMinus: rootSumSquare(mass.plusMinus / leg.value, (1 - mass.share) * REST_HANGS_WITHIN),
  };
  const found = worst([
    bound(weight, rear, 1, PAST_THE_END),
    bound(weight, front, -1, PAST_THE_END),
  ]);
  if (found === null) return sound(about, bound(weight, rear, 1, PAST_THE_END).measured);
  return weightRemark(study, stand, null, {
    found,
    joints: [found.joint],
    what: `At the stand, frame ${stand.frame}, the centre of mass is`,
    asks: "whoever stands still has it over the feet",
    source: STAND_SOURCE,
  });
}
