import { limbJoint, type Side } from "../../body";
import { rootSumSquare } from "../../geometry";
import type { MotionSpan, SideFigure } from "../../motion";
import type { Answer } from "../answer";
import { MAY_STRAIGHTEN, STRAIGHT_WITHIN } from "../methods/snap";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { walkMotion } from "../walk-motion";
import { kneeBend } from "./joint-angles";

/** A knee at a frame, drawn or in between: how far it is from straight, either way. Radians. */
export interface KneeAt {
  readonly frame: number;
  readonly bend: number;
  readonly plusMinus: number;
  /** The drawn panels it lies between; both the same on a panel. */
  readonly between: readonly [WalkPanel, WalkPanel];
}

/** Where a knee comes to be straight, between which panels, and how fast: the slower way. Radians a frame. */
export interface KneeStraight {
  readonly frame: number;
  readonly between: readonly [WalkPanel, WalkPanel];
  readonly speed: number;
  readonly plusMinus: number;
}

/** A knee's bend on a panel, by the marks that there are and those that follow from the stand's foot. */
export function drawnKnee(study: Study, panel: WalkPanel, side: Side): Answer {
  return study.once(panel, KNEES[side]);
}

const kneeOn = (side: Side) => (study: Study, panel: WalkPanel) =>
  kneeBend(study.whole(panel).marks.side, side);
const KNEES = { left: kneeOn("left"), right: kneeOn("right") } as const;

/**
 * Where a knee comes to be straight, drawn or in between, in the order of frames; but only where it can be
 * thrown there faster than so much. Elsewhere nothing is worked out.
 *
 * Shapes:  panels that follow one another
 * Units:   frames, radians a frame
 * Errors:  none; what is not marked or has no place on the ground is passed over
 */
export function straightKnees(
  study: Study,
  side: Side,
  row: readonly WalkPanel[],
  fasterThan: number,
): readonly KneeStraight[] {
  const bends = row.map((panel) => {
    const bend = drawnKnee(study, panel, side);
    return bend.kind === "value" ? Math.abs(bend.value) : Number.NaN;
  });
  const asked = row.slice(1).map((panel, nth) => {
    const from = row[nth];
    if (from === undefined) return false;
    const ends = [nth, nth + 1].some((at) => isThrown(row, bends, at, fasterThan));
    if (ends) return true;
    const least = Math.min(bends[nth] ?? Number.NaN, bends[nth + 1] ?? Number.NaN);
    return panel.frame - from.frame > 1 && least >= fasterThan && least < MAY_STRAIGHTEN;
  });
  return asked.includes(true) ? runs(study, side, row, asked).flatMap(straightIn) : [];
}

/**
 * Whether a pose has the knee straight, and a frame before and after it may be bent by so much more. A leg that
 * is drawn in evenly bends as the root of the time, which is the fastest that it leaves straight.
 */
function isThrown(
  row: readonly WalkPanel[],
  bends: readonly number[],
  nth: number,
  by: number,
): boolean {
  const here = bends[nth] ?? Number.NaN;
  return (
    here < STRAIGHT_WITHIN &&
    [nth - 1, nth + 1].every((at) => {
      const frames = Math.abs((row[at]?.frame ?? Number.NaN) - (row[nth]?.frame ?? Number.NaN));
      return (bends[at] ?? Number.NaN) / Math.sqrt(Math.max(1, frames)) - here >= by;
    })
  );
}

/** The knee frame by frame, through spans that follow one another and are asked about. */
function runs(
  study: Study,
  side: Side,
  row: readonly WalkPanel[],
  asked: readonly boolean[],
): KneeAt[][] {
  const all: KneeAt[][] = [];
  let open: KneeAt[] = [];
  asked.forEach((isAsked, nth) => {
    const [from, to] = [row[nth], row[nth + 1]];
    const knees = isAsked && from && to ? kneesIn(study, side, [from, to]) : null;
    if (knees === null) open = [];
    else if (open.length > 0) open.push(...knees.slice(1));
    else {
      open = knees;
      all.push(open);
    }
  });
  return all;
}

/** What lies between two panels, where nothing else does. */
function spanOf(study: Study, from: WalkPanel, to: WalkPanel): MotionSpan | undefined {
  const { motion, panelOf } = walkMotion(study);
  const span = motion.spans.find((one) => panelOf.get(one.from) === from);
  return span !== undefined && panelOf.get(span.to) === to ? span : undefined;
}

/** The knee from one pose to the next, both with it; null where it is not marked on both. */
export function kneesIn(
  study: Study,
  side: Side,
  between: readonly [WalkPanel, WalkPanel],
): KneeAt[] | null {
  const [start, end] = between.map((panel) => drawnKnee(study, panel, side));
  if (start?.kind !== "value" || end?.kind !== "value") return null;
  const [from, to] = between;
  const span = spanOf(study, from, to);
  const inner = span === undefined ? null : bendsIn(span, side);
  if (inner === null) return null;
  const slack = Math.max(start.plusMinus, end.plusMinus);
  return [
    {
      frame: from.frame,
      bend: Math.abs(start.value),
      plusMinus: start.plusMinus,
      between: [from, from] as const,
    },
    ...inner.map((one) => ({ ...one, plusMinus: solvedSlack(one.bend, slack), between })),
    {
      frame: to.frame,
      bend: Math.abs(end.value),
      plusMinus: end.plusMinus,
      between: [to, to] as const,
    },
  ];
}

/**
 * How exactly a knee is known that follows from how far hip and ankle are apart. Of two bones that are alike a
 * bend b makes the leg shorter by b²/8 of itself, and that share is known to √2/4 of what the marks tell a bend to:
 * near straight, little is known. Radians.
 */
function solvedSlack(bend: number, drawn: number): number {
  const share = (Math.SQRT2 / 4) * drawn;
  const [least, most] = [-1, 1].map((way) => Math.sqrt(Math.max(0, bend ** 2 + way * 8 * share)));
  return Math.max(bend - (least ?? 0), (most ?? 0) - bend);
}

type Bends = readonly Pick<KneeAt, "frame" | "bend">[];

/** What was read between two poses, for as long as somebody holds what lies between them. */
const known = new WeakMap<MotionSpan, Partial<Record<Side, Bends | null>>>();

function bendsIn(span: MotionSpan, side: Side): Bends | null {
  const before = known.get(span) ?? {};
  const told = before[side];
  if (told !== undefined) return told;
  const frames = span.to.frame - span.from.frame;
  const count = Math.max(1, Math.round(frames));
  const inner = Array.from({ length: count - 1 }, (_, at) => {
    const frame = span.from.frame + ((at + 1) * frames) / count;
    return { frame, bend: bendOf(span.legs(frame), side) };
  });
  const whole = inner.flatMap(({ frame, bend }) => (bend === null ? [] : [{ frame, bend }]));
  const bends = whole.length < inner.length ? null : whole;
  known.set(span, { ...before, [side]: bends });
  return bends;
}

function bendOf(figure: SideFigure, side: Side): number | null {
  const hip = figure[limbJoint(side, "hip")];
  const knee = figure[limbJoint(side, "knee")];
  const ankle = figure[limbJoint(side, "ankle")];
  if (hip === undefined || knee === undefined || ankle === undefined) return null;
  const thigh = Math.atan2(knee.x - hip.x, hip.y - knee.y);
  const shank = Math.atan2(ankle.x - knee.x, knee.y - ankle.y);
  return Math.abs(Math.atan2(Math.sin(thigh - shank), Math.cos(thigh - shank)));
}

/** Frames whose bend is below the limit and least among its neighbours. */
function straightIn(knees: readonly KneeAt[]): KneeStraight[] {
  return knees.flatMap((here, nth): KneeStraight[] => {
    const [before, after] = [knees[nth - 1], knees[nth + 1]];
    if (before === undefined || after === undefined || here.bend >= STRAIGHT_WITHIN) return [];
    if (here.bend > before.bend || here.bend > after.bend) return [];
    const slower = kneeSpeed(before, here) < kneeSpeed(here, after) ? before : after;
    const speed = kneeSpeed(slower, here);
    const plusMinus =
      rootSumSquare(here.plusMinus, slower.plusMinus) / Math.abs(here.frame - slower.frame);
    return [
      { frame: here.frame, between: [before.between[0], after.between[1]], speed, plusMinus },
    ];
  });
}

/** How fast a knee goes from one frame to another, either way. Radians a frame. */
export function kneeSpeed(one: KneeAt, other: KneeAt): number {
  const frames = Math.abs(other.frame - one.frame);
  return frames > 0 ? Math.abs(other.bend - one.bend) / frames : 0;
}
