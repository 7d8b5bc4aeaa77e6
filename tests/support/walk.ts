import type { JointName, LimbJoint, Mark, Side, ViewMarks } from "../../lib/body";
import type { Walk, WalkKind, WalkPanel } from "../../lib/gait";
import { VIEWS, type View } from "../../lib/geometry";
import type { StepPose } from "../../lib/motion";
import { ADVANCE, AT, FIRST, LEG, type Spot, stand, stepPanel } from "./built-poses";

/** Panels of the built walk, in frame order: two steps and the contact that ends the second. */
export type PanelName = "stand" | `${Side} ${StepPose}` | "end";

const FRAMES = 12; // a step, unless asked otherwise
const POSES: readonly StepPose[] = ["contact", "down", "passing", "up"];

/** Frames of the left step and of the right. */
export interface StepFrames {
  readonly left: number;
  readonly right: number;
}

/** How the walk is drawn: its kind and how exactly its marks were placed (share of a leg). */
export interface Drawn {
  readonly kind?: WalkKind;
  readonly precision?: number;
  readonly frames?: StepFrames;
  readonly exposure?: 1 | 2;
}

/**
 * A walk on the spot, left step first, on ones: stand at frame 1, then 13 16 19 22 25 … 37, marked in both
 * views. Its feet land heel first and stay where they land, its weight is over them, and its hips keep
 * the trade's order; in life's it is sound as well.
 */
export function walk(drawn: Drawn = {}): Walk {
  const { kind = "plain", precision = 0.005, exposure = 1 } = drawn;
  const frames = drawn.frames ?? { left: FRAMES, right: FRAMES };
  const steps = (["left", "right"] as const).flatMap((side, nth) =>
    POSES.map((pose) => {
      const from = FIRST + (nth === 0 ? 0 : frames.left);
      const frame = from + Math.round(AT[pose] * frames[side]);
      return stepPanel({ nth, side, pose, frame }, precision);
    }),
  );
  const last = FIRST + frames.left + frames.right;
  const end = stepPanel({ nth: 2, side: "left", pose: "contact", frame: last }, precision);
  return {
    kind,
    framesPerSecond: 24,
    exposure,
    travel: "on-the-spot",
    advance: ADVANCE,
    build: { headsTall: 7.5, legShare: 0.53, statureMetres: null },
    panels: [stand(precision), ...steps, { ...end, id: "end" }],
  };
}

/** The walk with one panel changed. */
export function withPanel(from: Walk, name: PanelName, change: Partial<WalkPanel>): Walk {
  if (!from.panels.some(({ id }) => id === name)) throw new Error(`no panel ${name}`);
  const panels = from.panels.map((panel) => (panel.id === name ? { ...panel, ...change } : panel));
  return { ...from, panels: panels.toSorted((a, b) => a.frame - b.frame) };
}

/** Both hips of a panel higher by so many leg lengths, in both views; below 0, lower. */
export function raise(from: Walk, name: PanelName, legs: number): Walk {
  return lift(from, name, ["left-hip", "right-hip"], legs);
}

/** Marks of one panel higher by so many leg lengths, in both views; below 0, lower. */
export function lift(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  legs: number,
): Walk {
  const bySide = moveMarks(from, name, "side", joints, { x: 0, y: legs });
  return moveMarks(bySide, name, "front", joints, { x: 0, y: legs });
}

/** Marks of one panel higher by so many leg lengths in the front view alone. */
export function liftAhead(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  legs: number,
): Walk {
  return moveMarks(from, name, "front", joints, { x: 0, y: legs });
}

/** Marks of one panel further ahead by so many leg lengths; below 0, back. */
export function push(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  legs: number,
): Walk {
  return moveMarks(from, name, "side", joints, { x: legs, y: 0 });
}

/** Marks of one panel further to the walker's right by so many leg lengths; below 0, to his left. */
export function shift(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  legs: number,
): Walk {
  return moveMarks(from, name, "front", joints, { x: -legs, y: 0 });
}

/** Left and right marks of a pose moved toward each other's place in one view: 1 is all the way. */
export function exchanged(
  from: Walk,
  name: PanelName,
  view: View,
  parts: readonly LimbJoint[],
  share: number,
): Walk {
  return changeMarks(from, name, view, (marks) => {
    const moved: Partial<Record<JointName, Mark>> = { ...marks };
    for (const part of parts) {
      const [left, right] = [marks[`left-${part}`], marks[`right-${part}`]];
      if (left === undefined || right === undefined) throw new Error(`no ${part} on ${name}`);
      const by = { x: share * (right.x - left.x), y: share * (right.y - left.y) };
      moved[`left-${part}`] = { ...left, x: left.x + by.x, y: left.y + by.y };
      moved[`right-${part}`] = { ...right, x: right.x - by.x, y: right.y - by.y };
    }
    return moved;
  });
}

/** A panel's stem moved to another frame; on the spot its drawing goes along with the ground. */
export function retime(from: Walk, name: PanelName, frame: number): Walk {
  const panel = from.panels.find(({ id }) => id === name);
  const passed = panel === undefined ? 0 : (frame - panel.frame) * from.advance;
  const gone = changeMarks(from, name, "side", (marks) => {
    const moved = Object.entries(marks).map(([j, mark]) => [
      j,
      { ...mark, x: mark.x - passed * LEG },
    ]);
    return Object.fromEntries(moved);
  });
  return withPanel(gone, name, { frame });
}

/** The walk with marks taken off one panel, in both views unless one is named. */
export function unmark(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  views: readonly View[] = VIEWS,
): Walk {
  const without = (marks: ViewMarks) =>
    Object.fromEntries(
      Object.entries(marks).filter(([joint]) => !joints.includes(joint as JointName)),
    );
  return views.reduce((rest, view) => changeMarks(rest, name, view, without), from);
}

/** Marks of one panel placed as exactly as a share of a leg, in both views. */
export function placedTo(
  from: Walk,
  name: PanelName,
  joints: readonly JointName[],
  share: number,
): Walk {
  const vague = (marks: ViewMarks) =>
    Object.fromEntries(
      Object.entries(marks).map(([joint, mark]) => [
        joint,
        joints.includes(joint as JointName) ? { ...mark, precision: share * LEG } : mark,
      ]),
    );
  return VIEWS.reduce((rest, view) => changeMarks(rest, name, view, vague), from);
}

/** The walk without one of its panels. */
export function without(from: Walk, name: PanelName): Walk {
  return { ...from, panels: from.panels.filter(({ id }) => id !== name) };
}

function moveMarks(
  from: Walk,
  name: PanelName,
  view: View,
  joints: readonly JointName[],
  by: Spot,
): Walk {
  return changeMarks(from, name, view, (marks) => {
    const moved: Partial<Record<JointName, Mark>> = { ...marks };
    for (const joint of joints) {
      const mark = marks[joint];
      if (mark === undefined) throw new Error(`no ${joint} on ${name}`);
      moved[joint] = { ...mark, x: mark.x + by.x * LEG, y: mark.y - by.y * LEG };
    }
    return moved;
  });
}

function changeMarks(
  from: Walk,
  name: PanelName,
  view: View,
  change: (marks: ViewMarks) => ViewMarks,
): Walk {
  const panel = from.panels.find(({ id }) => id === name);
  if (panel === undefined) throw new Error(`no panel ${name}`);
  const marks = { ...panel.marks, [view]: change(panel.marks[view]) };
  return withPanel(from, name, { marks });
}
