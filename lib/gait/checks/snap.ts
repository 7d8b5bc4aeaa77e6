import { limbJoint, SIDES, type Side } from "../../body";
import { gathered } from "../../gathered";
import { median } from "../../geometry";
import type { MotionSpan } from "../../motion";
import { clearlyBeyond } from "../beyond";
import type { Finding, Reading, Remark } from "../finding";
import { placeOf } from "../ground-mark";
import { SNAP_SOURCE, SNAPS_FROM, TIMES_MEDIAN } from "../methods/snap";
import { isQuiet } from "../quiet";
import {
  askedKnees,
  drawnKnee,
  type KneeStraight,
  type KneesAsked,
  type KneeTrack,
  kneeSpeed,
  kneeTrack,
  straightKnees,
} from "../readings/knee-between";
import { type Step, walkingPanels } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { walkMotion } from "../walk-motion";
import { capital, degrees } from "../words";
import { cannotTell, NEEDS_A_STEP, sound } from "./answers";

/**
 * Does a knee snap: thrown straight and back between two poses, faster than its step moves it otherwise? The
 * drawings may each be right; what is between them is seen.
 *
 * Shapes:  one answer a step and side, by the fastest
 * Units:   radians a frame
 * Errors:  none; a pose without hip, knee and ankle, or without a place on the ground, answers "cannot-tell"
 * Source:  beside the limits, in its method
 */
export function snap(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "snap")) return [];
  if (steps.length === 0) {
    return [cannotTell({ check: "snap", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  const panels = walkingPanels(walk.panels);
  return gathered(SIDES, (side) =>
    steps.map((step) => answer(study, step, side, panels[panels.indexOf(step.contact) - 1])),
  );
}

/** By the poses alone where they leave nothing to follow; what lies between is worked out only else. */
function answer(study: Study, step: Step, side: Side, before: WalkPanel | undefined): Finding {
  const seen = study.onceIn(step, LOOK[side], before);
  if ("kind" in seen) return seen;
  const { spanOf } = walkMotion(study);
  const row = rowOf(step, before);
  const spans = row.slice(1).map((to, nth) => spanOf(row[nth] as WalkPanel, to));
  return study.onceIn(step, FOLLOW[side], before, seen, ...spans);
}

const LOOK = { left: looked("left"), right: looked("right") } as const;
const FOLLOW = { left: followed("left"), right: followed("right") } as const;

function rowOf(step: Step, before: WalkPanel | undefined): readonly WalkPanel[] {
  const panels = panelsOf(step);
  return before === undefined ? panels : [before, ...panels];
}

function panelsOf({ panels, next }: Step): readonly WalkPanel[] {
  return next === null ? panels : [...panels, next];
}

function aboutOf(step: Step, side: Side) {
  return { check: "snap", side, panels: panelsOf(step) } as const;
}

/** Where a step's knee is to be followed; or what there is to say without. */
function looked(side: Side) {
  return (study: Study, step: Step, before: WalkPanel | undefined): Finding | KneesAsked => {
    const about = aboutOf(step, side);
    const { leg, walk } = study;
    if (leg.kind === "cannot-tell") return cannotTell(about, leg.needs);
    if (about.panels.some((panel) => drawnKnee(study, panel, side).kind === "cannot-tell")) {
      return cannotTell(about, `the ${side} hip, knee and ankle marked in every pose of the step`);
    }
    if (!about.panels.every((panel) => Number.isFinite(placeOf(panel, walk)))) {
      return cannotTell(about, "a place on the ground for each pose");
    }
    const drawn = drawnSpeed(study, about.panels, side);
    const asked = askedKnees(study, side, rowOf(step, before), limitBy(SURELY * drawn));
    return asked.thrown.length + asked.between.length > 0 ? asked : sound(about, null);
  };
}

/** What is seen where the knee is followed. */
function followed(side: Side) {
  return (
    study: Study,
    step: Step,
    before: WalkPanel | undefined,
    asked: KneesAsked,
    ...spans: readonly (MotionSpan | undefined)[]
  ): Finding => {
    const about = aboutOf(step, side);
    const track = kneeTrack(study, side, { panels: rowOf(step, before), spans });
    const end = step.next?.frame ?? Number.POSITIVE_INFINITY;
    const [fastest] = straightKnees(track, asked)
      .filter(({ frame }) => frame >= step.contact.frame && frame < end)
      .toSorted((a, b) => b.speed - b.plusMinus - (a.speed - a.plusMinus));
    if (fastest === undefined) return sound(about, null);
    const { speed: value, plusMinus } = fastest;
    const measured: Reading = { value, plusMinus, unit: "rad/frame" };
    if (!clearlyBeyond(value, plusMinus, SNAPS_FROM)) return sound(about, measured);
    const limit = limitBy(usualSpeed(track, before === undefined ? 0 : track.ofPose(1)));
    if (!clearlyBeyond(value, plusMinus, limit)) return sound(about, measured);
    return remarkOn(study, side, fastest, { measured, limit });
  };
}

const SURELY = 0.75;

function limitBy(usual: number): number {
  return Math.max(SNAPS_FROM, TIMES_MEDIAN * usual);
}

/**
 * About how fast a step's knee goes, told by the poses alone: from each to the next evenly. Three quarters of
 * it are taken for the least that the median of the frames may be. Our own choice.
 */
function drawnSpeed(study: Study, panels: readonly WalkPanel[], side: Side): number {
  const speeds: number[] = [];
  for (const [at, panel] of panels.entries()) {
    const from = panels[at - 1];
    if (from === undefined) continue;
    const [was, is] = [drawnKnee(study, from, side), drawnKnee(study, panel, side)];
    if (was.kind !== "value" || is.kind !== "value") continue;
    const frames = Math.max(1, Math.round(panel.frame - from.frame));
    const speed = Math.abs(Math.abs(is.value) - Math.abs(was.value)) / frames;
    for (let frame = 0; frame < frames; frame += 1) speeds.push(speed);
  }
  return speeds.length === 0 ? 0 : median(speeds);
}

/** The median speed of a step's knee, frame by frame from its contact on. Radians a frame. */
function usualSpeed(track: KneeTrack, from: number): number {
  const speeds: number[] = [];
  for (let nth = from + 1; nth < track.length; nth += 1) {
    const [was, is] = [track.at(nth - 1), track.at(nth)];
    if (was !== null && is !== null) speeds.push(kneeSpeed(was, is));
  }
  return speeds.length === 0 ? 0 : median(speeds);
}

function remarkOn(
  { yardstick }: Study,
  side: Side,
  { frame, between }: KneeStraight,
  { measured, limit }: { readonly measured: Reading; readonly limit: number },
): Remark {
  const joints = (["hip", "knee", "ankle"] as const).map((part) => limbJoint(side, part));
  const when = Number.isInteger(frame) ? `frame ${frame}` : "a frame";
  const [from, to] = between;
  return {
    kind: "remark",
    check: "snap",
    level: "may-show",
    yardstick,
    side,
    panels: between.map(({ id }) => id),
    frames: between.map((panel) => panel.frame),
    spots: between.map(({ id }) => ({ panel: id, view: "side", joints })),
    measured,
    expected: { value: limit, plusMinus: 0, unit: "rad/frame" },
    title: capital(`${side} knee snaps`),
    why: `Between frames ${from.frame} and ${to.frame} the ${side} knee is thrown straight at ${when} and back, ${degrees(measured)} a frame; up to ${degrees({ value: limit, plusMinus: 0 })} passes in this step. It may be seen to snap, though each drawing is right.`,
    source: SNAP_SOURCE,
    beyond: (measured.value - limit) / limit,
  };
}
