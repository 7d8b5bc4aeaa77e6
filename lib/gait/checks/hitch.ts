import { rootSumSquare } from "../../geometry";
import { clearlyBeyond } from "../beyond";
import type { Finding, Reading, Remark, Spot } from "../finding";
import { placeOf } from "../ground-mark";
import type { HipHeight } from "../hip-height";
import { hipsAlong, ONE_HIP_ALONG } from "../hips-along";
import { BACKWARD, COUNTS_FROM, HITCH_SOURCE, LOWS } from "../methods/hitch";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { percent, sided } from "../words";
import { cannotTell, NEEDS_A_STEP, sound } from "./answers";

/**
 * Do the hips go smoothly between the poses: down and up once a step, and forward all the time? The
 * in-betweens never go beyond the poses in height, so a low too many is one of the poses, and so is a
 * step back.
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
  return steps.flatMap((step) => judge(study, step));
}

interface Posed {
  readonly panel: WalkPanel;
  readonly hip: HipHeight;
}

function judge(study: Study, step: Step): Finding[] {
  const side = step.weightOn;
  const panels = step.next === null ? step.panels : [...step.panels, step.next];
  const about = { check: "hitch", side, panels } as const;
  const posed = panels.flatMap((panel): Posed[] => {
    const hip = study.hipOf(panel);
    return hip.kind === "value" ? [{ panel, hip }] : [];
  });
  if (study.leg.kind === "cannot-tell") return [cannotTell(about, study.leg.needs)];
  if (posed.length < panels.length) return [cannotTell(about, "a hip marked in every pose")];
  if (step.next === null) return [cannotTell(about, "the contact that ends the step")];
  const remarks = [lowsOf(study, step, posed), backOf(study, step, panels)];
  const told = remarks.filter((remark) => remark !== null);
  const lows = { value: lowsIn(posed).length, plusMinus: 0, unit: "times" } as const;
  return told.length > 0 ? told : [sound(about, lows)];
}

/** The lows of a step, in order: where a fall that counts ends in a rise that counts. */
function lowsIn(posed: readonly Posed[]): readonly Posed[] {
  const lows: Posed[] = [];
  let [low, high] = [posed[0], posed[0]];
  let falls = true; // as it comes out of the step before
  for (const one of posed) {
    if (low === undefined || high === undefined) break;
    if (rises(high, one)) high = one;
    if (rises(one, low)) low = one;
    if (falls && counts(low, one)) {
      lows.push(low);
      [falls, high] = [false, one];
    } else if (!falls && counts(one, high)) {
      [falls, low] = [true, one];
    }
  }
  return lows;
}

function rises(from: Posed, to: Posed): boolean {
  return to.hip.value > from.hip.value;
}

/** Whether the second stands higher than the first by more than what a height is exact to. */
function counts(from: Posed, to: Posed): boolean {
  const plusMinus = rootSumSquare(from.hip.plusMinus, to.hip.plusMinus);
  return clearlyBeyond(to.hip.value - from.hip.value, plusMinus, COUNTS_FROM);
}

function lowsOf(study: Study, step: Step, posed: readonly Posed[]): Remark | null {
  if (isQuiet(study.walk.kind, "hitch:lows")) return null;
  const lows = lowsIn(posed);
  const extra = lows[LOWS];
  if (extra === undefined) return null;
  const at = posed.indexOf(extra);
  const before = posed[at - 1]?.panel ?? extra.panel;
  const measured = { value: lows.length, plusMinus: 0, unit: "times" } as const;
  return remarkOn(study, step, [before, extra.panel], {
    measured,
    limit: LOWS,
    title: "Hips sink twice",
    why: `In the ${sided(step.weightOn, "step")} the hips sink ${lows.length} times, at frames ${lows.map(({ panel }) => panel.frame).join(" and ")}; once a step passes as a walk. The step may be seen to hitch at frame ${extra.panel.frame}.`,
  });
}

function backOf(study: Study, step: Step, panels: readonly WalkPanel[]): Remark | null {
  const found = panels.slice(1).flatMap((panel, at) => {
    const before = panels[at];
    const asked = before !== undefined && !isTurnedRound(study, before, panel);
    const back = asked ? goneBack(study, before, panel) : null;
    return before === undefined || back === null ? [] : [{ before, panel, back }];
  });
  const [worst] = found.toSorted((a, b) => b.back.value - a.back.value);
  if (worst === undefined) return null;
  const { before, panel, back } = worst;
  return remarkOn(study, step, [before, panel], {
    measured: back,
    limit: BACKWARD,
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
  const [was, is] = [from, to].map((panel) => {
    const hips = hipsAlong(study, panel, ONE_HIP_ALONG.contact);
    return hips === null ? null : { ...hips, x: hips.x + placeOf(panel, study.walk) };
  });
  if (was === null || was === undefined || is === null || is === undefined) return null;
  const plusMinus = rootSumSquare(was.plusMinus, is.plusMinus);
  const value = was.x - is.x;
  return clearlyBeyond(value, plusMinus, BACKWARD) ? { value, plusMinus, unit: "leg" } : null;
}

interface Told {
  readonly measured: Reading;
  readonly limit: number;
  readonly title: string;
  readonly why: string;
}

function remarkOn(
  study: Study,
  step: Step,
  panels: readonly WalkPanel[],
  { measured, limit, title, why }: Told,
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
    source: HITCH_SOURCE,
    beyond: (measured.value - limit) / limit,
  };
}

function hipsIn(study: Study, panel: WalkPanel): Spot {
  const hip = study.hipOf(panel);
  return hip.kind === "value"
    ? { panel: panel.id, view: hip.view, joints: hip.joints }
    : { panel: panel.id, view: "side", joints: [] };
}
