import {
  footJoints,
  hundredth,
  JOINTS,
  type JointName,
  limbJoint,
  type Mark,
  markOf,
  otherSide,
  PANEL,
  type PoseMarks,
  type Side,
  type ViewMarks,
} from "../../body";
import { VIEWS } from "../../geometry";
import { placeOf } from "../ground-mark";
import type { GroundPace } from "../places/places-of";
import { footPitch } from "../readings/joint-angles";
import type { WalkPanel } from "../walk";

/** A pose to be made between two that are drawn. Frames and ground as the walk has them. */
export interface Between {
  readonly before: WalkPanel;
  readonly after: WalkPanel;
  readonly added: Pick<WalkPanel, "frame" | "pose" | "weightOn" | "place">;
  readonly pace: GroundPace;
  /** Panel units a leg. */
  readonly legUnits: number;
}

/** How far a foot that lands is turned up about its heel: 25° on average in 22 captured contacts. */
const LANDS_TOE_UP = (25 * Math.PI) / 180;

/**
 * Marks of a pose between two: joints go in a straight line over the ground by the share of time, the foot
 * that carries stays where it lies flattest on either, and one that lands is turned up about its heel.
 *
 * Units:   panel units of the added panel
 * Errors:  none; a joint that only one of them has is left out
 */
export function inBetween(between: Between): PoseMarks {
  const share = shareOf(between);
  const [side, front] = VIEWS.map((view) => {
    const drift = view === "side" ? driftOf(between) : { before: 0, after: 0 };
    return mixed(between.before.marks[view], between.after.marks[view], share, drift);
  });
  const marks = { side: side ?? {}, front: front ?? {} };
  return planted(between, marks);
}

function shareOf({ before, after, added }: Between): number {
  const span = after.frame - before.frame;
  return span > 0 ? (added.frame - before.frame) / span : 0;
}

/** How far each neighbour's drawing lies aside on the added panel's paper. Panel units. */
function driftOf({ before, after, added, pace, legUnits }: Between) {
  const here = placeOf(added, pace);
  const by = (panel: WalkPanel) => {
    const drift = (placeOf(panel, pace) - here) * legUnits;
    return Number.isFinite(drift) ? drift : 0;
  };
  return { before: by(before), after: by(after) };
}

interface Drift {
  readonly before: number;
  readonly after: number;
}

function mixed(before: ViewMarks, after: ViewMarks, share: number, drift: Drift): ViewMarks {
  const made = JOINTS.flatMap((joint): [JointName, Mark][] => {
    const from = markOf(before, joint);
    const to = markOf(after, joint);
    if (from === null || to === null) return [];
    const x = mix(from.x + drift.before, to.x + drift.after, share);
    const y = mix(from.y, to.y, share);
    const precision = Math.max(from.precision, to.precision);
    return [[joint, { x: hundredth(x), y: hundredth(y), precision }]];
  });
  return Object.fromEntries(made);
}

function mix(from: number, to: number, share: number): number {
  return from + share * (to - from);
}

/** The feet that stand, laid down as a neighbour has them; one that lands is turned up. */
function planted(between: Between, marks: PoseMarks): PoseMarks {
  const { before, after, added } = between;
  const { weightOn: side, pose } = added;
  if (side === null) return marks;
  // A foot that lands stands where the pose after it has it; the one behind still stands as before.
  if (pose === "contact") {
    const rear = otherSide(side);
    const behind = stands(before, rear) ? laid(between, marks, rear, before) : marks;
    return laid(between, behind, side, after, LANDS_TOE_UP);
  }
  const flatter = pitchOf(after, side) < pitchOf(before, side) || !stands(before, side);
  return laid(between, marks, side, flatter ? after : before);
}

function pitchOf({ marks }: WalkPanel, side: Side): number {
  const pitch = footPitch(marks.side, side);
  return pitch.kind === "value" ? Math.abs(pitch.value) : Number.POSITIVE_INFINITY;
}

/** One foot as a neighbour has it on the ground, in both views. */
function laid(
  between: Between,
  { side, front }: PoseMarks,
  foot: Side,
  from: WalkPanel,
  turn = 0,
): PoseMarks {
  const drift = driftOf(between)[from === between.before ? "before" : "after"];
  const flat = copied(from.marks.side, side, foot, drift);
  const turned = turn === 0 ? flat : turnedUp(flat, foot, turn);
  return { side: turned, front: atHeights(copied(from.marks.front, front, foot, 0), turned, foot) };
}

function stands({ weightOn, pose }: WalkPanel, side: Side): boolean {
  return weightOn === side || pose === "contact";
}

function copied(from: ViewMarks, to: ViewMarks, side: Side, drift: number): ViewMarks {
  const foot = footJoints(side).flatMap((joint): [JointName, Mark][] => {
    const mark = markOf(from, joint);
    return mark === null ? [] : [[joint, { ...mark, x: hundredth(mark.x + drift) }]];
  });
  return { ...to, ...Object.fromEntries(foot) };
}

function turnedUp(marks: ViewMarks, side: Side, turn: number): ViewMarks {
  const heel = markOf(marks, limbJoint(side, "heel"));
  if (heel === null) return marks;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const turned = footJoints(side).flatMap((joint): [JointName, Mark][] => {
    const mark = markOf(marks, joint);
    if (mark === null) return [];
    const [x, y] = [mark.x - heel.x, mark.y - heel.y];
    const at = { x: heel.x + x * cos + y * sin, y: heel.y - x * sin + y * cos };
    return [[joint, { ...mark, x: hundredth(at.x), y: hundredth(Math.min(at.y, PANEL.groundY)) }]];
  });
  return { ...marks, ...Object.fromEntries(turned) };
}

/** The front view's foot as high as the side view's. */
function atHeights(front: ViewMarks, side: ViewMarks, foot: Side): ViewMarks {
  const marks = footJoints(foot).flatMap((joint): [JointName, Mark][] => {
    const mark = markOf(front, joint);
    const height = markOf(side, joint);
    return mark === null || height === null ? [] : [[joint, { ...mark, y: height.y }]];
  });
  return { ...front, ...Object.fromEntries(marks) };
}
