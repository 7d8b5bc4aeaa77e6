import { type JointName, limbJoint, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond, greatestOf } from "../beyond";
import { byPattern } from "../by-pattern";
import type { Finding, Reading, Remark } from "../finding";
import { footPoints, isWholeFoot, needsFoot } from "../foot";
import { FLAT_AT, FLAT_SOURCE, FLAT_WITHIN, TOE_OVER_HEEL, TOE_SOURCE } from "../methods/foot-roll";
import { isQuiet } from "../quiet";
import { footPitch } from "../readings/joint-angles";
import type { Step } from "../step";
import type { Study } from "../study";
import { FOOT_ROLL_TRAITS } from "../traits/foot-traits";
import type { WalkPanel } from "../walk";
import { capital, degrees, percent, sided } from "../words";
import { cannotTell, NEEDS_A_SIDE, NEEDS_A_STEP, sound } from "./answers";
import { nextContact, whoseStep } from "./step-words";

/**
 * Does the foot that carries go down heel first, lie flat while it carries, and peel off from heel
 * to toe?
 *
 * Shapes:  an answer for each question of each step: landing, flat (trade twice), leaving
 * Units:   leg lengths (toe over heel), radians (pitch, toe up positive)
 * Errors:  none; a pose or mark that is missing answers "cannot-tell"
 * Source:  beside each limit
 */
export function footRoll(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "foot-roll")) return [];
  if (study.pattern !== null) return byPattern(study, study.pattern, "foot-roll", FOOT_ROLL_TRAITS);
  if (steps.length === 0) {
    return [cannotTell({ check: "foot-roll", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  return gathered(study.inSteps(judge), (told) => told);
}

function judge(study: Study, step: Step): Finding[] {
  const { weightOn, contact } = step;
  if (weightOn === null) {
    return [cannotTell({ check: "foot-roll", side: null, panels: [contact] }, NEEDS_A_SIDE)];
  }
  return [
    landing(study, contact, weightOn),
    ...FLAT_AT[study.common].map((pose) => flat(study, step, weightOn, pose)),
    leaving(study, step, weightOn),
  ];
}

interface ToeOverHeel {
  readonly panel: WalkPanel;
  readonly measured: Reading;
  readonly joints: readonly JointName[];
}

function toeOverHeel(study: Study, panel: WalkPanel, side: Side): ToeOverHeel | null {
  const points = footPoints(panel, side, study.leg);
  const [heel, ...front] = points;
  const tip = front.at(-1);
  if (!isWholeFoot(points) || heel === undefined || tip === undefined) return null;
  const plusMinus = rootSumSquare(heel.plusMinus, tip.plusMinus);
  const measured: Reading = { value: tip.y - heel.y, plusMinus, unit: "leg" };
  return { panel, measured, joints: [limbJoint(side, heel.joint), limbJoint(side, tip.joint)] };
}

function landing(study: Study, contact: WalkPanel, side: Side): Finding {
  const about = { check: "foot-roll", side, panels: [contact] } as const;
  if (study.leg.kind === "cannot-tell") return cannotTell(about, study.leg.needs);
  const found = toeOverHeel(study, contact, side);
  if (found === null) return cannotTell(about, needsFoot(side));
  const { measured, joints } = found;
  if (!clearlyBeyond(-measured.value, measured.plusMinus, -TOE_OVER_HEEL)) {
    return sound(about, measured);
  }
  const where = measured.value < 0 ? "below" : "above";
  return {
    ...located(study, contact, side, joints),
    subject: "landing",
    measured,
    expected: { value: TOE_OVER_HEEL, plusMinus: 0, unit: "leg" },
    title: capital(`${side} foot does not land on its heel`),
    why: `At the contact, frame ${contact.frame}, the ${side} toe is ${percent(measured)} of a leg ${where} its heel; above ${percent({ value: TOE_OVER_HEEL, plusMinus: 0 })} it is seen to be up. The foot may be seen to slap down flat, or to reach for the ground with its toe.`,
    source: TOE_SOURCE,
    beyond: (TOE_OVER_HEEL - measured.value) / TOE_OVER_HEEL,
  };
}

function flat(study: Study, step: Step, side: Side, pose: "down" | "passing"): Finding {
  const panel = step[pose];
  const about = {
    check: "foot-roll",
    side,
    panels: panel === null ? step.panels : [panel],
  } as const;
  if (study.leg.kind === "cannot-tell") return cannotTell(about, study.leg.needs);
  if (panel === null) return cannotTell(about, `the ${pose} of ${whoseStep(side)} drawn`);
  const pitch = footPitch(panel.marks.side, side);
  if (pitch.kind === "cannot-tell") return cannotTell(about, needsFoot(side));
  const measured: Reading = { value: pitch.value, plusMinus: pitch.plusMinus, unit: "rad" };
  const away = Math.abs(pitch.value);
  if (!clearlyBeyond(away, pitch.plusMinus, FLAT_WITHIN)) return sound(about, measured);
  const up = pitch.value > 0;
  const front = panel.marks.side[limbJoint(side, "ball")] === undefined ? "toe" : "ball";
  return {
    ...located(study, panel, side, [limbJoint(side, "heel"), limbJoint(side, front)]),
    subject: "standing",
    measured,
    expected: { value: up ? FLAT_WITHIN : -FLAT_WITHIN, plusMinus: 0, unit: "rad" },
    title: capital(`${side} foot is not flat at the ${pose}`),
    why: `At the ${sided(side, pose)}, frame ${panel.frame}, the foot that carries pitches ${degrees(measured)}, ${up ? "toe up" : "heel up"}; up to ${degrees({ value: FLAT_WITHIN, plusMinus: 0 })} passes as flat. The weight may seem not to rest on it.`,
    source: FLAT_SOURCE,
    beyond: (away - FLAT_WITHIN) / FLAT_WITHIN,
  };
}

/** After the passing the foot leaves heel first: at no pose up to the next contact is its toe above. */
function leaving(study: Study, step: Step, side: Side): Finding {
  const { passing, next, panels, contact } = step;
  const about = { check: "foot-roll", side, panels } as const;
  if (study.leg.kind === "cannot-tell") return cannotTell(about, study.leg.needs);
  if (passing === null) return cannotTell(about, `the passing of ${whoseStep(side)} drawn`);
  if (next === null) return cannotTell(about, nextContact(side, contact));
  const peeling = [...panels.slice(panels.indexOf(passing) + 1), next].filter(
    ({ pose, weightOn }) => pose === "contact" || weightOn === side,
  );
  const read = peeling
    .map((panel) => toeOverHeel(study, panel, side))
    .filter((found) => found !== null);
  const worst = greatestOf(read, surely);
  if (worst !== undefined) {
    const { value, plusMinus } = worst.measured;
    if (clearlyBeyond(value, plusMinus, TOE_OVER_HEEL)) return toeFirst(study, side, worst);
  }
  const leaves = { ...about, panels: peeling };
  if (worst === undefined || read.length < peeling.length)
    return cannotTell(leaves, needsFoot(side));
  return sound(leaves, worst.measured);
}

/** How far the toe is over the heel at least. Leg lengths. */
function surely({ measured: { value, plusMinus } }: ToeOverHeel): number {
  return value - plusMinus;
}

function toeFirst(study: Study, side: Side, { panel, measured, joints }: ToeOverHeel): Remark {
  return {
    ...located(study, panel, side, joints),
    subject: "leaving",
    measured,
    expected: { value: TOE_OVER_HEEL, plusMinus: 0, unit: "leg" },
    title: capital(`${side} foot leaves toe first`),
    why: `At frame ${panel.frame} the ${side} foot is about to leave the ground, and its toe is ${percent(measured)} of a leg above its heel; up to ${percent({ value: TOE_OVER_HEEL, plusMinus: 0 })} passes as flat, and a foot peels off from heel to toe. It may be seen to be pulled off the ground by its toe.`,
    source: TOE_SOURCE,
    beyond: (measured.value - TOE_OVER_HEEL) / TOE_OVER_HEEL,
  };
}

type Located = Pick<
  Remark,
  "kind" | "check" | "level" | "yardstick" | "side" | "panels" | "frames" | "spots"
>;

function located(
  { yardstick }: Study,
  { id, frame }: WalkPanel,
  side: Side,
  joints: readonly JointName[],
): Located {
  return {
    kind: "remark",
    check: "foot-roll",
    level: "may-show",
    yardstick,
    side,
    panels: [id],
    frames: [frame],
    spots: [{ panel: id, view: "side", joints }],
  };
}
