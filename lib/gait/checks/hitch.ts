import { gathered } from "../../gathered";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Finding, Reading, Remark, Spot } from "../finding";
import { hipsAlong, ONE_HIP_ALONG } from "../hips-along";
import {
  ARC_SOURCE,
  ARC_TURN,
  BACKWARD,
  BOUNCE_SOURCE,
  FAST,
  HITCH_SOURCE,
  LOWS,
  lowsAsked,
} from "../methods/hitch";
import { isQuiet } from "../quiet";
import { groundBetween, type SeenOn } from "../readings/ground-between";
import { type Step, walkingPanels } from "../step";
import { stepHeights } from "../step-heights";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, degrees, listed, percent, sided } from "../words";
import { cannotTell, NEEDS_A_STEP, sound } from "./answers";
import { arcTurn } from "./arc-turns";
import { lowsIn, mostLows, type Posed, rises } from "./hip-lows";

/**
 * Do the hips go smoothly between the poses: down and up once a step, in a double bounce twice, and forward
 * all the time? The in-betweens never go beyond the poses in height, so a low too many is one of the poses, and
 * so is a step back. And does the arc of the head or a wrist turn sharply where it goes fast?
 *
 * Shapes:  one answer a step
 * Units:   leg lengths; lows are counted
 * Errors:  none; a pose without a hip, or a step without its end, answers "cannot-tell"
 * Source:  beside the limits, in its method
 */
export function hitch(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "hitch")) return [];
  if (steps.length === 0) {
    return [cannotTell({ check: "hitch", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  const walking = walkingPanels(walk.panels);
  const inSteps = study.inSteps(judge);
  return gathered(steps, (step, at) => {
    const found = inSteps[at] as readonly Finding[];
    if (found.some(({ kind }) => kind === "cannot-tell")) return found;
    const sharp = sharpArc(study, step, walking);
    return sharp === null ? found : [...found.filter(({ kind }) => kind === "remark"), sharp];
  });
}

function judge(study: Study, step: Step): Finding[] {
  const side = step.weightOn;
  const panels = step.next === null ? step.panels : [...step.panels, step.next];
  const about = { check: "hitch", side, panels } as const;
  const posed = stepHeights(study, step);
  if (study.leg.kind === "cannot-tell") return [cannotTell(about, study.leg.needs)];
  if (posed.length < panels.length) return [cannotTell(about, "a hip marked in every pose")];
  if (step.next === null) return [cannotTell(about, "the contact that ends the step")];
  const remarks = [lowsOf(study, step, posed), backOf(study, step, panels)];
  const told = remarks.filter((remark) => remark !== null);
  const lows = { value: lowsIn(posed).length, plusMinus: 0, unit: "times" } as const;
  return told.length > 0 ? told : [sound(about, lows)];
}

function lowsOf(study: Study, step: Step, posed: readonly Posed[]): Remark | null {
  const lows = lowsIn(posed);
  const limit = lowsAsked(study.walk.kind);
  const extra = lows[limit];
  if (extra === undefined) return tooFew(study, step, posed, lows);
  const at = posed.indexOf(extra);
  const before = posed[at - 1]?.panel ?? extra.panel;
  const measured = { value: lows.length, plusMinus: 0, unit: "times" } as const;
  const often = TIMES[lows.length] ?? `${lows.length} times`;
  const passes =
    limit === LOWS.once ? "once a step passes as a walk" : "a double bounce sinks twice";
  return remarkOn(study, step, [before, extra.panel], {
    measured,
    limit,
    title: `Hips sink ${often}`,
    why: `In the ${sided(step.weightOn, "step")} the hips sink ${often}, at frames ${listed(lows.map(({ panel }) => `${panel.frame}`))}; ${passes}. The step may be seen to hitch at frame ${extra.panel.frame}.`,
    source: limit === LOWS.once ? HITCH_SOURCE : BOUNCE_SOURCE,
  });
}

const TIMES: readonly string[] = ["never", "once", "twice"];

/** A double bounce that sinks but once. Hips that do not sink at all are level, which hip-range tells. */
function tooFew(
  study: Study,
  step: Step,
  posed: readonly Posed[],
  lows: readonly Posed[],
): Remark | null {
  const limit = lowsAsked(study.walk.kind);
  const [low] = lows;
  if (low === undefined || mostLows(posed) >= limit) return null;
  const high = posed.reduce((top, one) => (rises(top, one) ? one : top), low);
  const panels = [low.panel, high.panel].toSorted((a, b) => a.frame - b.frame);
  return remarkOn(study, step, panels, {
    measured: { value: LOWS.once, plusMinus: 0, unit: "times" },
    limit,
    title: "Hips sink but once",
    why: `In the ${sided(step.weightOn, "step")} the hips sink once, at frame ${low.panel.frame}; a double bounce sinks twice. The step may read as a plain one.`,
    source: BOUNCE_SOURCE,
  });
}

function backOf(study: Study, step: Step, panels: readonly WalkPanel[]): Remark | null {
  const found: { readonly before: WalkPanel; readonly panel: WalkPanel; readonly back: Reading }[] =
    [];
  for (const [at, panel] of panels.entries()) {
    const before = panels[at - 1];
    if (before === undefined || isTurnedRound(study, before, panel)) continue;
    const back = goneBack(study, before, panel);
    if (back !== null) found.push({ before, panel, back });
  }
  const worst = greatestOf(found, ({ back }) => back.value);
  if (worst === undefined) return null;
  const { before, panel, back } = worst;
  return remarkOn(study, step, [before, panel], {
    measured: back,
    limit: BACKWARD,
    source: HITCH_SOURCE,
    title: "Hips go back",
    why: `From frame ${before.frame} to ${panel.frame} the hips go back by ${percent(back)} of a leg over the ground; up to ${percent({ value: BACKWARD, plusMinus: 0 })} passes. Between the two poses the body may be seen to hitch.`,
  });
}

/**
 * In life the hips are highest before the passing. Where a strip has its up behind it, as the trade draws
 * them, a figure of life's up stands farther back, and it is the order that is to be asked about.
 */
function isTurnedRound({ common }: Study, from: WalkPanel, to: WalkPanel): boolean {
  return common === "life" && from.pose === "passing" && to.pose === "up";
}

/** How far back the hips go over the ground from one pose to the next; null where they do not, clearly. */
function goneBack(study: Study, from: WalkPanel, to: WalkPanel): Reading | null {
  const [was, is] = [study.once(from, hipsOn), study.once(to, hipsOn)];
  if (was === null || is === null) return null;
  const forward = groundBetween(study, was, is);
  if (forward === null) return null;
  const { value: by, plusMinus } = forward;
  const value = -by;
  return clearlyBeyond(value, plusMinus, BACKWARD) ? { value, plusMinus, unit: "leg" } : null;
}

function hipsOn(study: Study, panel: WalkPanel): SeenOn | null {
  const hips = hipsAlong(study, panel, ONE_HIP_ALONG.contact);
  return hips === null ? null : { panel, x: hips.x, plusMinus: hips.plusMinus };
}

function sharpArc(study: Study, step: Step, walking: readonly WalkPanel[]): Remark | null {
  const found = arcTurn(study, step, walking);
  if (found === null) return null;
  const { arc, joints, frame, panels, turn, spacing } = found;
  const whose = `${arc.replace("-", " ")}'s`;
  const fast = `${spacing.value.toFixed(1)} ± ${spacing.plusMinus.toFixed(1)}`;
  return {
    ...remarkOn(study, step, panels, {
      measured: turn,
      limit: ARC_TURN,
      source: ARC_SOURCE,
      title: `${capital(whose)} arc breaks`,
      why: `At frame ${frame} the ${whose} arc turns by ${degrees(turn)} from drawing to drawing, and beside it goes ${fast} times as far as its median; where it goes more than ${FAST} times as far, up to ${degrees({ value: ARC_TURN, plusMinus: 0 })} passes. It may be seen to jerk.`,
    }),
    spots: panels.map(({ id }) => ({ panel: id, view: "side", joints })),
  };
}

interface Told {
  readonly measured: Reading;
  readonly limit: number;
  readonly title: string;
  readonly why: string;
  readonly source: string;
}

function remarkOn(
  study: Study,
  step: Step,
  panels: readonly WalkPanel[],
  { measured, limit, title, why, source }: Told,
): Remark {
  return {
    kind: "remark",
    check: "hitch",
    level: "may-show",
    yardstick: study.yardstick,
    side: step.weightOn,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: panels.map((panel) => hipsIn(study, panel)),
    measured,
    expected: { value: limit, plusMinus: 0, unit: measured.unit },
    title,
    why,
    source,
    beyond: Math.abs(measured.value - limit) / limit,
  };
}

function hipsIn(study: Study, panel: WalkPanel): Spot {
  const hip = study.hipOf(panel);
  return hip.kind === "value"
    ? { panel: panel.id, view: hip.view, joints: hip.joints }
    : { panel: panel.id, view: "side", joints: [] };
}
