import { type JointName, otherSide } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import type { Frame } from "../../motion";
import { ARC_JOINTS, type ArcName, type ArcPoint, arcFrames, stretchOf } from "../arc-path";
import { clearlyBeyond } from "../beyond";
import type { Reading } from "../finding";
import { placeOf } from "../ground-mark";
import { ARC_TURN, COUNTS_FROM, FAST } from "../methods/hitch";
import type { Step } from "../step";
import type { Study } from "../study";
import type { Walk, WalkPanel } from "../walk";

/** Where an arc turns sharply though the drawings beside it lie far apart. */
export interface ArcTurn {
  readonly arc: ArcName;
  readonly joints: readonly JointName[];
  /** The frame of the drawing at which it turns; it may lie between two poses. */
  readonly frame: number;
  /** The poses on both sides of it, or the one before it and the one that it is. */
  readonly panels: readonly [WalkPanel, WalkPanel];
  readonly turn: Reading;
  /** The wider of the two spacings, as a multiple of the arc's median. */
  readonly spacing: Reading;
}

/** The arcs that swing free. An ankle's is broken by the ground; what the hips do is asked by height and travel. */
type FreeArc = Extract<ArcName, "head" | "left-wrist" | "right-wrist">;

/** Those of a step, the first told first. */
function freeArcs({ weightOn }: Step): readonly FreeArc[] {
  const first = weightOn ?? "left";
  return ["head", `${first}-wrist`, `${otherSide(first)}-wrist`];
}

/** Turns that differ by less are one turn of the whole body, told of the first of its arcs. Radians. */
const SAME_TURN = 1e-6;

/**
 * The sharpest turn of the arcs of a step that is surely beyond what passes; null where there is none. It is
 * read along the in-betweens, from the pose before the contact, and only at the poses at which the drawings
 * themselves turn so far and go so fast: what in-betweens do of their own is nothing to be drawn otherwise.
 *
 * @param walking the panels of the walk itself
 */
export function arcTurn(study: Study, step: Step, walking: readonly WalkPanel[]): ArcTurn | null {
  const from = walking[walking.indexOf(step.contact) - 1] ?? step.contact;
  const bent = study.onceIn(step, bendsIn, from, placeOf(from, study.walk));
  if (bent.length === 0) return null;
  // How fast an arc goes is held against the whole walk, so what follows is not remembered with the step.
  const pace = paceOf(study, walking);
  if (pace === null) return null;
  const panels = rowOf(step, from);
  const turns = gathered(bent, ({ arc, bends }) => {
    const median = medianSpeed(study, arc, walking, pace);
    const fast = bends.filter(({ speed }) => speed > FAST * median);
    if (fast.length === 0) return [];
    return turnsOf(study, arc, { panels, pace, median }).filter((turn) =>
      fast.some(({ frame }) => frame === turn.frame),
    );
  });
  const own = turns.filter(({ frame }) => frame >= step.contact.frame);
  const sharpest = Math.max(...own.map(({ turn }) => turn.value));
  return own.find(({ turn }) => turn.value > sharpest - SAME_TURN) ?? null;
}

/** How fast the hips go from the first pose to the last, evenly. Leg lengths a frame; null without hips there. */
function paceOf(study: Study, walking: readonly WalkPanel[]): number | null {
  const [first, last] = [walking[0], walking.at(-1)];
  const from = first === undefined ? null : markedAt(study, first, "hips", 0);
  const to = last === undefined ? null : markedAt(study, last, "hips", 0);
  if (from === null || to === null || !(to.frame > from.frame)) return null;
  return (to.x - from.x) / (to.frame - from.frame);
}

const medians = new WeakMap<Study, Map<ArcName, number>>();

/** Of all frames of the walk, straight from pose to pose. */
function medianSpeed(
  study: Study,
  arc: ArcName,
  walking: readonly WalkPanel[],
  pace: number,
): number {
  const known = medians.get(study) ?? new Map<ArcName, number>();
  const before = known.get(arc);
  if (before !== undefined) return before;
  const points = walking.map((panel) => markedAt(study, panel, arc, pace));
  const lines = linesOf(points.filter((point) => point !== null));
  const sorted = lines.toSorted((a, b) => a.speed - b.speed);
  let rest = sorted.reduce((sum, { frames }) => sum + frames, 0) / 2;
  const middle = sorted.find(({ frames }) => {
    rest -= frames;
    return rest <= 0;
  });
  const median = middle?.speed ?? Number.NaN;
  medians.set(study, known.set(arc, median));
  return median;
}

/** A pose at which an arc turns sharply from drawing to drawing, and how fast it goes by. */
interface Bend {
  readonly frame: Frame;
  /** Leg lengths a frame. */
  readonly speed: number;
}

interface Bent {
  readonly arc: ArcName;
  readonly bends: readonly Bend[];
}

/** The arcs of a step that turn as sharply as is asked, from the pose before its contact on. */
function bendsIn(study: Study, step: Step, from: WalkPanel, _place: number): readonly Bent[] {
  const panels = rowOf(step, from);
  if (step.next === null) return [];
  return gathered(freeArcs(step), (arc): Bent[] => {
    const bends = bendsOf(study, arc, panels);
    return bends.length === 0 ? [] : [{ arc, bends }];
  });
}

function rowOf({ panels, next }: Step, from: WalkPanel): readonly WalkPanel[] {
  return [...new Set([from, ...panels, ...(next === null ? [] : [next])])];
}

/**
 * The poses at which the drawings turn as sharply as is asked, and how fast they go there. They must do so
 * whenever they are shown: a pose that only comes late holds the arc up, which is a matter of its frame and
 * not of its arc. So a turn is read without the frames, from the hips; and the way is that to the pose and
 * on from it together. What moves less than counts turns anyhow.
 */
function bendsOf(study: Study, arc: FreeArc, panels: readonly WalkPanel[]): readonly Bend[] {
  const lines = linesOf(drawnAt(study, panels, arc) ?? []);
  return gathered(lines, (line, at): Bend[] => {
    const back = lines[at - 1];
    if (back === undefined || Math.min(back.length, line.length) <= COUNTS_FROM) return [];
    if (!(turnBetween(back, line) > ARC_TURN)) return [];
    const speed = (back.length + line.length) / (back.frames + line.frames);
    return [{ frame: line.from.frame, speed }];
  });
}

/** Null where a mark lacks in one of the panels. */
function drawnAt(study: Study, panels: readonly WalkPanel[], arc: FreeArc) {
  const points: ArcPoint[] = [];
  for (const panel of panels) {
    const point = study.once(panel, fromHips, placeOf(panel, study.walk))[arc];
    if (point === null) return null;
    points.push(point);
  }
  return points;
}

/** The free arcs' points of a panel, counted from its hips; null where a mark of one lacks. */
function fromHips(study: Study, panel: WalkPanel, _place: number) {
  const hips = markedAt(study, panel, "hips", 0);
  const of = (arc: FreeArc): ArcPoint | null => {
    const point = hips === null ? null : markedAt(study, panel, arc, 0);
    if (point === null || hips === null) return null;
    return { ...point, x: point.x - hips.x, y: point.y - hips.y };
  };
  return { head: of("head"), "left-wrist": of("left-wrist"), "right-wrist": of("right-wrist") };
}

interface Around {
  readonly panels: readonly WalkPanel[];
  readonly pace: number;
  readonly median: number;
}

function turnsOf(study: Study, arc: ArcName, { panels, pace, median }: Around): ArcTurn[] {
  const [from, to] = [panels[0], panels.at(-1)];
  const stretch = from && to ? stretchOf(study, from, to, everyOf(study.walk)) : null;
  const points = stretch === null ? null : arcFrames(study, stretch, arc, pace);
  if (points === null) return [];
  const lines = linesOf(points);
  return gathered(lines, (line, at): ArcTurn[] => {
    const { frame } = line.from;
    const back = lines[at - 1];
    const found = back === undefined ? null : readTurn(back, line, median);
    const around = panelsAround(panels, frame);
    if (found === null || around === null) return [];
    return [{ arc, joints: ARC_JOINTS[arc], frame, panels: around, ...found }];
  });
}

/** Drawings a second that an arc is followed by, at most: those of film. */
const MOST_A_SECOND = 24;

/** Frames from one drawing to the next: a motion file's frames are finer than anyone draws or sees. */
function everyOf({ exposure, framesPerSecond }: Walk): number {
  return Math.max(exposure, Math.floor(framesPerSecond / MOST_A_SECOND));
}

/** Null where it is not surely beyond what passes. */
function readTurn(
  back: Line,
  ahead: Line,
  median: number,
): Pick<ArcTurn, "turn" | "spacing"> | null {
  const own = rootSumSquare(ahead.from.plusMinus, ahead.from.plusMinus); // of a line, by its two ends
  const turn = {
    value: turnBetween(back, ahead),
    plusMinus: rootSumSquare(own / back.length, own / ahead.length),
    unit: "rad",
  } as const;
  const wider = back.speed > ahead.speed ? back : ahead;
  const spacing = {
    value: wider.speed / median,
    plusMinus: own / wider.frames / median,
    unit: "number",
  } as const;
  const turns = clearlyBeyond(turn.value, turn.plusMinus, ARC_TURN);
  return turns && clearlyBeyond(spacing.value, spacing.plusMinus, FAST) ? { turn, spacing } : null;
}

/** From a drawing to the next. */
interface Line {
  readonly from: ArcPoint;
  readonly frames: number;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  /** Leg lengths a frame. */
  readonly speed: number;
}

function linesOf(points: readonly ArcPoint[]): readonly Line[] {
  return gathered(points.slice(1), (to, at): Line[] => {
    const from = points[at];
    if (from === undefined || !(to.frame > from.frame)) return [];
    const [x, y, frames] = [to.x - from.x, to.y - from.y, to.frame - from.frame];
    const length = Math.hypot(x, y);
    return [{ from, frames, x, y, length, speed: length / frames }];
  });
}

/** By how much a way turns from one line to the next, either way round. Radians; 0 where one stands still. */
function turnBetween(back: Line | undefined, ahead: Line): number {
  if (back === undefined || back.length === 0 || ahead.length === 0) return 0;
  const cross = back.x * ahead.y - back.y * ahead.x;
  return Math.abs(Math.atan2(cross, back.x * ahead.x + back.y * ahead.y));
}

function panelsAround(
  panels: readonly WalkPanel[],
  frame: number,
): readonly [WalkPanel, WalkPanel] | null {
  const to = panels.findIndex((panel) => panel.frame >= frame);
  const [before, after] = [panels[to - 1], panels[to]];
  return before === undefined || after === undefined ? null : [before, after];
}

/** An arc's point as marked in a pose, seen walking along; null where a mark of it lacks. */
function markedAt(study: Study, panel: WalkPanel, arc: ArcName, pace: number): ArcPoint | null {
  const joints: readonly JointName[] = ARC_JOINTS[arc];
  let [x, y] = [-pace * panel.frame, 0];
  for (const joint of joints) {
    const mark = study.ground(panel, joint);
    if (mark === null) return null;
    x += mark.x / joints.length;
    y += mark.y / joints.length;
  }
  return { frame: panel.frame, x, y, plusMinus: 0 };
}
