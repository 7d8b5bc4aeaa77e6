import type { Side } from "../../body";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Finding, Reading, Remark } from "../finding";
import {
  CREEPS_BACK,
  CREEPS_FORWARD,
  CREEPS_SOURCE,
  IN_THE_LOOP,
  LOOP_SOURCE,
  SHIFT_SOURCE,
  SHIFTS_FROM,
} from "../methods/lead-in";
import { isQuiet } from "../quiet";
import {
  footSinceStand,
  hipsSinceStand,
  type LeadingIn,
  leadingIn,
  type SinceStand,
} from "../readings/leading-in";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, percent } from "../words";
import { cannotTell, NEEDS_A_SIDE, NEEDS_A_STEP, sound } from "./answers";

/**
 * Does the walk set off from one foot? The foot that stays put does not move before it steps off, the body goes
 * over it before the other one lifts, and the lead-in stands before the loop. A walk without a lead-in has
 * nothing that could be out of place; on the spot the foot is not asked about.
 *
 * Shapes:  a remark for each of the three; else one answer, and one for what cannot be told
 * Units:   leg lengths; lead-ins are counted
 * Errors:  none; without a stand, its marks or places it answers "cannot-tell"
 * Source:  beside the limits, in its method
 */
export function leadIn(study: Study): readonly Finding[] {
  if (isQuiet(study.walk.kind, "lead-in")) return [];
  const leading = leadingIn(study.walk.panels);
  const astray = leading.astray.map((panel) => remarkAstray(study, leading, panel));
  if (leading.leads.length > 0) return [...astray, ...judge(study, leading)];
  const about = { check: "lead-in", side: leading.stays, panels: [] } as const;
  if (leading.contact === null) return [cannotTell(about, NEEDS_A_STEP)];
  return astray.length > 0 ? astray : [sound(about, null)];
}

function judge(study: Study, leading: LeadingIn): Finding[] {
  const { stand, leads, stays } = leading;
  const panels = stand === null ? leads : [stand, ...leads];
  const about = { check: "lead-in", side: stays, panels } as const;
  if (study.leg.kind === "cannot-tell") return [cannotTell(about, study.leg.needs)];
  if (stays === null) return [cannotTell(about, NEEDS_A_SIDE)];
  if (stand === null) return [cannotTell(about, "the stand that the lead-in leaves")];
  const from = { study, stand, side: stays };
  const [feet, hips] = [
    footSinceStand(study, leading, stays),
    hipsSinceStand(study, leading, stays),
  ];
  const remarks = [creeps(from, feet ?? []), staysBack(from, hips)].filter((one) => one !== null);
  const needs = [footNeeds(feet, stays), hipsNeed(hips, stays)].filter((one) => one !== null);
  const told = [...remarks, ...needs.map((one) => cannotTell(about, one))];
  return told.length > 0 ? told : [sound(about, hips?.measured ?? null)];
}

/**
 * With a larger ± a body would pass that goes as far away from its foot as people's come toward it. Leg
 * lengths; the 3.1 % of captured steps at passing, less the 1 % that is asked for.
 */
const VAGUE_BEYOND = 0.021;

/** What keeps from telling whether the foot stays, as a phrase after "needs"; null when nothing does. */
function footNeeds(feet: readonly SinceStand[] | null, side: Side): string | null {
  if (feet === null) {
    return `the ${side} ball or toe marked on stand and lead-in, and both placed on the ground by hand`;
  }
  const exact = feet.every(({ measured }) => isWithin(measured, CREEPS_FORWARD));
  return exact ? null : `the ${side} ball and toe marked more exactly`;
}

function hipsNeed(hips: SinceStand | null, side: Side): string | null {
  const marks = `the hips and the ${side} foot`;
  if (hips === null) return `${marks} marked in the front view of stand and lead-in`;
  const { value, plusMinus } = hips.measured;
  const surely = value - plusMinus >= SHIFTS_FROM;
  return surely || isWithin(hips.measured, VAGUE_BEYOND) ? null : `${marks} marked more exactly`;
}

function isWithin({ value, plusMinus }: Reading, vague: number): boolean {
  return Number.isFinite(value) && plusMinus <= vague;
}

interface From {
  readonly study: Study;
  readonly stand: WalkPanel;
  /** The foot that stays. */
  readonly side: Side;
}

function limitOf({ value }: Reading): number {
  return value < 0 ? CREEPS_BACK : CREEPS_FORWARD;
}

function creeps(from: From, feet: readonly SinceStand[]): Remark | null {
  const { side, stand } = from;
  const excess = ({ measured }: SinceStand) =>
    Math.abs(measured.value) - measured.plusMinus - limitOf(measured);
  const worst = greatestOf(feet, excess);
  if (worst === undefined) return null;
  const { measured, panel } = worst;
  const size = Math.abs(measured.value);
  const limit = limitOf(measured);
  if (!clearlyBeyond(size, measured.plusMinus, limit)) return null;
  const back = measured.value < 0;
  return remarkOn(from, worst, {
    view: "side",
    expected: back ? -limit : limit,
    title: `${side} foot moves before it steps off`,
    why: `The ${side} foot stays put while the other steps off, and moves ${percent(measured)} of a leg ${back ? "back" : "forward"} from frame ${stand.frame} to ${panel.frame}; up to ${percent({ value: limit, plusMinus: 0 })} passes as planted. It may be seen to slide.`,
    source: CREEPS_SOURCE,
    beyond: (size - limit) / limit,
  });
}

function staysBack(from: From, hips: SinceStand | null): Remark | null {
  if (hips === null) return null;
  const { side, stand } = from;
  const { measured, panel } = hips;
  if (!clearlyBeyond(-measured.value, measured.plusMinus, -SHIFTS_FROM)) return null;
  const way = measured.value < 0 ? "away from" : "toward";
  return remarkOn(from, hips, {
    view: "front",
    expected: SHIFTS_FROM,
    title: `body does not go over the ${side} foot`,
    why: `From frame ${stand.frame} to ${panel.frame} the hips go ${percent(measured)} of a leg ${way} the ${side} foot, which is to carry alone; from ${percent({ value: SHIFTS_FROM, plusMinus: 0 })} toward it on the weight has shifted. The other foot may seem to lift by itself.`,
    source: SHIFT_SOURCE,
    beyond: (SHIFTS_FROM - measured.value) / SHIFTS_FROM,
  });
}

interface Told extends Pick<Remark, "title" | "why" | "source" | "beyond"> {
  readonly view: "side" | "front";
  readonly expected: number;
}

function remarkOn(
  { study, stand, side }: From,
  { panel, measured, joints }: SinceStand,
  { view, expected, title, ...told }: Told,
): Remark {
  const panels = [stand, panel];
  return {
    kind: "remark",
    check: "lead-in",
    level: "may-show",
    yardstick: study.yardstick,
    side,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: panels.map(({ id }) => ({ panel: id, view, joints })),
    measured,
    expected: { value: expected, plusMinus: 0, unit: "leg" },
    title: capital(title),
    ...told,
  };
}

function remarkAstray({ yardstick }: Study, { contact }: LeadingIn, panel: WalkPanel): Remark {
  const panels = contact === null ? [panel] : [contact, panel];
  return {
    kind: "remark",
    check: "lead-in",
    level: "may-show",
    yardstick,
    side: panel.weightOn,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: [], // it is the label that stands in the wrong place, not the drawing
    measured: { value: 1, plusMinus: 0, unit: "poses" },
    expected: { value: IN_THE_LOOP, plusMinus: 0, unit: "poses" },
    title: "Lead-in stands inside the loop",
    why: `The pose at frame ${panel.frame} is called a lead-in, and the walk's first contact is at frame ${contact?.frame}: 1 lead-in stands inside the loop, where ${IN_THE_LOOP} pass. It is not judged as part of its step, and each time round the walk may seem to set off anew.`,
    source: LOOP_SOURCE,
    beyond: 1,
  };
}
