import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond, greatestFirst } from "../beyond";
import { expectedFrames, stepFrames, type Timed } from "../expected-frames";
import type { CannotTell, Finding, Reading, Remark } from "../finding";
import {
  EXPOSURES_OFF,
  PASSING_LIMITS,
  PASSING_SPREAD,
  PASSING_TIME_SOURCE,
  SPACING_SOURCE,
} from "../methods/gaps";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, framesInWords, sided } from "../words";
import { nextContact, whoseStep } from "./step-words";

/** Two neighbouring panels, the frames between them, and the frames that were expected. */
interface Gap {
  readonly from: WalkPanel;
  readonly to: WalkPanel;
  readonly frames: number;
  readonly expected: number;
}

/**
 * Trade: every gap within one exposure of the even layout's, the contacts staying where they are.
 * Source: Williams, The Animator's Survival Kit (2001): frames 1 4 7 10 13 of a 12-frame step.
 */
export function spacing(study: Study, step: Step): Finding {
  const timed = expectedFrames(step, "trade", study.walk);
  if (timed === null) return cannotTell(step, nextContact(step.weightOn, step.contact));
  if (timed.length < 3)
    return cannotTell(step, `a pose between the contacts of ${whoseStep(step.weightOn)}`);
  if (!rises(timed)) {
    return cannotTell(
      step,
      `the poses of ${whoseStep(step.weightOn)} in the order down, passing, up`,
    );
  }
  const uneven = gapsOf(timed).toSorted((a, b) => greatestFirst(off(a), off(b)));
  const [worst] = uneven;
  if (worst === undefined) return cannotTell(step, nextContact(step.weightOn, step.contact));
  const allowed = EXPOSURES_OFF * study.walk.exposure;
  if (!clearlyBeyond(off(worst), 0, allowed)) {
    return sound(step, { value: off(worst), plusMinus: 0, unit: "frames" });
  }
  const bad = uneven.filter((gap) => clearlyBeyond(off(gap), 0, allowed));
  const panels = timed
    .map(({ panel }) => panel)
    .filter((panel) => bad.some(({ from, to }) => from === panel || to === panel));
  return {
    ...located(study, step, panels),
    level: "may-show",
    measured: { value: worst.frames, plusMinus: 0, unit: "frames" },
    expected: { value: worst.expected, plusMinus: 0, unit: "frames" },
    title: capital(`${sided(step.weightOn, "step")} is unevenly timed`),
    why: `${capital(worst.from.pose)} to ${worst.to.pose} takes ${framesInWords(worst.frames)} where an even step has ${worst.expected}: the move may be seen to ${worst.frames > worst.expected ? "slow down" : "jump"} there.`,
    source: SPACING_SOURCE,
    beyond: (off(worst) - allowed) / allowed,
  };
}

/** Life: passing comes at about 0.6 of the step. */
export function passingShare(study: Study, step: Step): Finding {
  const length = stepFrames(step);
  const { contact, next, passing } = step;
  if (length === null || next === null)
    return cannotTell(step, nextContact(step.weightOn, step.contact));
  if (passing === null) return cannotTell(step, `the passing of ${whoseStep(step.weightOn)} drawn`);
  const value = (passing.frame - contact.frame) / length;
  if (!Number.isFinite(value)) return cannotTell(step, "the frame of the passing");
  // A pose shown for n frames stands for a moment anywhere within them.
  const held = (study.walk.exposure - 1) / 2;
  const measured: Reading = {
    value,
    plusMinus: rootSumSquare(held, held) / length,
    unit: "share",
  };
  const broken = PASSING_LIMITS.find(
    ({ from, to }) =>
      clearlyBeyond(value, measured.plusMinus, to) ||
      clearlyBeyond(-value, measured.plusMinus, -from),
  );
  if (broken === undefined) return sound(step, measured);
  const early = value < broken.from;
  const bound = early ? broken.from : broken.to;
  return {
    ...located(study, step, [contact, passing, next]),
    level: broken.level,
    measured,
    expected: { value: bound, plusMinus: 0, unit: "share" },
    title: capital(`${sided(step.weightOn, "passing")} comes ${early ? "early" : "late"}`),
    why: `The feet pass at ${shareInWords(measured)} of ${whoseStep(step.weightOn)} (frame ${passing.frame} of ${contact.frame} to ${next.frame}); people pass at 0.60, between 0.55 and 0.67. The swinging foot ${broken.level === "shows" ? "will" : "may"} seem to ${early ? "hurry by and then hang" : "lag and then rush"}.`,
    source: PASSING_TIME_SOURCE,
    beyond: Math.abs(value - bound) / PASSING_SPREAD,
  };
}

function gapsOf(timed: readonly Timed[]): Gap[] {
  return gathered(timed.slice(1), (to, index) => {
    const from = timed[index];
    if (from === undefined) return [];
    return [
      {
        from: from.panel,
        to: to.panel,
        frames: to.panel.frame - from.panel.frame,
        expected: to.expected - from.expected,
      },
    ];
  });
}

function off({ frames, expected }: Gap): number {
  return Math.abs(frames - expected);
}

function rises(timed: readonly Timed[]): boolean {
  return gapsOf(timed).every(({ frames, expected }) => frames >= 0 && expected >= 0);
}

function shareInWords({ value, plusMinus }: Reading): string {
  const shown = value.toFixed(2);
  return plusMinus > 0 ? `${shown} ± ${plusMinus.toFixed(2)}` : shown;
}

type Located = Pick<
  Remark,
  "kind" | "check" | "yardstick" | "side" | "panels" | "frames" | "spots"
>;

function located({ yardstick }: Study, step: Step, panels: readonly WalkPanel[]): Located {
  return {
    kind: "remark",
    check: "gaps",
    yardstick,
    side: step.weightOn,
    panels: panels.map(({ id }) => id),
    frames: panels.map(({ frame }) => frame),
    spots: [], // time has no place on the drawing: the panels' stems are where it shows
  };
}

function panelsOf({ panels, next }: Step): string[] {
  return [...panels, ...(next === null ? [] : [next])].map(({ id }) => id);
}

function sound(step: Step, measured: Reading): Finding {
  return { kind: "sound", check: "gaps", side: step.weightOn, panels: panelsOf(step), measured };
}

function cannotTell(step: Step, needs: string): CannotTell {
  return { kind: "cannot-tell", check: "gaps", side: step.weightOn, panels: panelsOf(step), needs };
}
