import { limbJoint, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import type { MotionSpan, SideFigure } from "../../motion";
import type { Answer } from "../answer";
import { MAY_STRAIGHTEN, STRAIGHT_WITHIN } from "../methods/snap";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
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

/** Panels that follow one another, and what lies between each and the next. */
export interface KneeRow {
  readonly panels: readonly WalkPanel[];
  readonly spans: readonly (MotionSpan | undefined)[];
}

/** Where in a row of panels a knee is to be followed, told by the poses alone. */
export interface KneesAsked {
  /** Poses that have it straight between two that have it bent. */
  readonly thrown: readonly number[];
  /** Poses from which to the next it may come straight in between. */
  readonly between: readonly number[];
}

/**
 * Where a knee may be thrown straight so fast that it is beyond its own ±. Between two poses it would have to
 * leave each by so much, and by how little is known of it where it is straight.
 *
 * Units:   fasterThan: radians a frame
 */
export function askedKnees(
  study: Study,
  side: Side,
  panels: readonly WalkPanel[],
  fasterThan: number,
): KneesAsked {
  const bends = panels.map((panel) => bentAt(study, panel, side));
  const thrown = gathered(bends, (_, nth) =>
    isThrown(panels, bends, nth, fasterThan) ? [nth] : [],
  );
  const between = gathered(panels.slice(1), (panel, nth) => {
    const [from, start, end] = [panels[nth], bends[nth], bends[nth + 1]];
    const frames = panel.frame - (from?.frame ?? Number.NaN);
    if (!(frames > 1) || start == null || end == null) return [];
    const least = Math.min(start.bend, end.bend);
    const vague = leastSlack(Math.max(start.plusMinus, end.plusMinus));
    const away = (fasterThan * frames) / framesIn(frames) + vague;
    return least >= away && least < MAY_STRAIGHTEN ? [nth] : [];
  });
  return { thrown, between };
}

type Bent = Pick<KneeAt, "bend" | "plusMinus">;

function bentAt(study: Study, panel: WalkPanel, side: Side): Bent | null {
  const knee = drawnKnee(study, panel, side);
  if (knee.kind !== "value") return null;
  return { bend: Math.abs(knee.value), plusMinus: knee.plusMinus };
}

/**
 * Whether a pose has the knee straight, and a frame before and after it may be bent by so much more. A leg that
 * is drawn in evenly bends as the root of the time, which is the fastest that it leaves straight.
 */
function isThrown(
  panels: readonly WalkPanel[],
  bends: readonly (Bent | null)[],
  nth: number,
  by: number,
): boolean {
  const [here, frame] = [bends[nth], panels[nth]?.frame ?? Number.NaN];
  if (here == null || here.bend >= STRAIGHT_WITHIN) return false;
  const least = here.bend + by + here.plusMinus;
  return [nth - 1, nth + 1].every((at) => {
    const frames = Math.max(1, Math.abs((panels[at]?.frame ?? Number.NaN) - frame));
    return (bends[at]?.bend ?? Number.NaN) / Math.sqrt(frames) >= least;
  });
}

/** Into how many frames the way between two poses is divided. */
function framesIn(frames: number): number {
  return Math.max(1, Math.round(frames));
}

/** A knee frame by frame, drawn and in between, each worked out when it is asked for; null where it is not known. */
export interface KneeTrack {
  readonly length: number;
  at(nth: number): KneeAt | null;
  /** Which of the frames a pose is. */
  ofPose(nth: number): number;
}

export function kneeTrack(study: Study, side: Side, { panels, spans }: KneeRow): KneeTrack {
  const starts = [0];
  for (const [nth, span] of spans.entries()) {
    const inner = span === undefined ? 2 : framesIn(span.to.frame - span.from.frame);
    starts.push((starts[nth] ?? 0) + inner); // where nothing is known, one frame says so
  }
  const ofPose = (nth: number) => starts[nth] ?? Number.NaN;
  const known: (KneeAt | null)[] = [];
  const read = (nth: number): KneeAt | null => {
    const pose = starts.findLastIndex((start) => start <= nth);
    const [from, to] = [panels[pose], panels[pose + 1]];
    const start = from === undefined ? null : bentAt(study, from, side);
    if (from === undefined || start === null) return null;
    if (nth === ofPose(pose)) return { ...start, frame: from.frame, between: [from, from] };
    const end = to === undefined ? null : bentAt(study, to, side);
    const inner = bendIn(spans[pose], side, nth - ofPose(pose));
    if (to === undefined || end === null || inner === null) return null;
    const plusMinus = solvedSlack(inner.bend, Math.max(start.plusMinus, end.plusMinus));
    return { ...inner, plusMinus, between: [from, to] };
  };
  return {
    length: ofPose(panels.length - 1) + 1,
    ofPose,
    at(nth) {
      const before = known[nth];
      if (before !== undefined) return before;
      const told = read(nth);
      known[nth] = told;
      return told;
    },
  };
}

/** Where a knee comes to be straight, drawn or in between, of where that is asked. */
export function straightKnees(track: KneeTrack, { thrown, between }: KneesAsked): KneeStraight[] {
  const from = thrown.map((nth) => lowFrom(track, track.ofPose(nth)));
  const inner = gathered(between, (nth) => {
    const first = track.ofPose(nth) + 1;
    return Array.from({ length: track.ofPose(nth + 1) - first }, (_, at) => first + at);
  });
  return gathered([...new Set([...from, ...inner])], (nth) => straightAt(track, nth));
}

/** The frame down to which a knee straightens from the one it is looked for at. */
function lowFrom(track: KneeTrack, from: number): number {
  const bend = (nth: number) => track.at(nth)?.bend ?? Number.POSITIVE_INFINITY;
  let low = from;
  for (const way of [-1, 1]) {
    while (bend(low + way) < bend(low)) low += way;
  }
  return low;
}

/** The least ± of a knee that follows from hip and ankle and is straight. Radians. */
function leastSlack(drawn: number): number {
  return Math.sqrt(STRAIGHT_WITHIN ** 2 + 8 * shareOf(drawn)) - STRAIGHT_WITHIN;
}

function shareOf(drawn: number): number {
  return (Math.SQRT2 / 4) * drawn;
}

/**
 * How exactly a knee is known that follows from how far hip and ankle are apart. Of two bones that are alike a
 * bend b makes the leg shorter by b²/8 of itself, and that share is known to √2/4 of what the marks tell a bend to:
 * near straight, little is known. Radians.
 */
function solvedSlack(bend: number, drawn: number): number {
  const share = shareOf(drawn);
  const [least, most] = [-1, 1].map((way) => Math.sqrt(Math.max(0, bend ** 2 + way * 8 * share)));
  return Math.max(bend - (least ?? 0), (most ?? 0) - bend);
}

type Bend = Pick<KneeAt, "frame" | "bend">;

/** What was read between two poses, frame by frame, for as long as somebody holds what lies between them. */
const bendsOf = new WeakMap<MotionSpan, Record<Side, (Bend | null | undefined)[]>>();

function bendIn(span: MotionSpan | undefined, side: Side, nth: number): Bend | null {
  if (span === undefined) return null;
  const ofSpan = bendsOf.get(span) ?? { left: [], right: [] };
  const before = ofSpan[side][nth];
  if (before !== undefined) return before;
  const frames = span.to.frame - span.from.frame;
  const frame = span.from.frame + (nth * frames) / framesIn(frames);
  const bend = bendOf(span.leg(side, frame), side);
  const told = bend === null ? null : { frame, bend };
  ofSpan[side][nth] = told;
  bendsOf.set(span, ofSpan);
  return told;
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

/** A frame whose bend is below the limit and least among its neighbours. */
function straightAt(track: KneeTrack, nth: number): KneeStraight[] {
  const [before, here, after] = [track.at(nth - 1), track.at(nth), track.at(nth + 1)];
  if (before === null || here === null || after === null || here.bend >= STRAIGHT_WITHIN) return [];
  if (here.bend > before.bend || here.bend > after.bend) return [];
  const slower = kneeSpeed(before, here) < kneeSpeed(here, after) ? before : after;
  const speed = kneeSpeed(slower, here);
  const plusMinus =
    rootSumSquare(here.plusMinus, slower.plusMinus) / Math.abs(here.frame - slower.frame);
  return [{ frame: here.frame, between: [before.between[0], after.between[1]], speed, plusMinus }];
}

/** How fast a knee goes from one frame to another, either way. Radians a frame. */
export function kneeSpeed(one: KneeAt, other: KneeAt): number {
  const frames = Math.abs(other.frame - one.frame);
  return frames > 0 ? Math.abs(other.bend - one.bend) / frames : 0;
}
