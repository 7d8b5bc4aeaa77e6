import {
  footJoints,
  JOINTS,
  type JointName,
  markOf,
  type PoseMarks,
  SIDES,
  shiftedMarks,
  type ViewMarks,
} from "../../body";
import { gathered } from "../../gathered";
import type { Point, View } from "../../geometry";
import type { NoReading } from "../answer";
import { placedIn } from "../figure/placed-figure";
import { sizeIn } from "../figure/sized";
import { studyWalk } from "../study";
import type { Walk, WalkPanel, Yardstick } from "../walk";
import { fitted } from "./fitted";
import { type Source, sourcesFor } from "./sources";

/**
 * How exactly a guess is known, a share of a leg: the coarsest a mark may be. Leaving one pose of a
 * captured stride out and guessing it, half the marks are off by less than 1.7 %, nine in ten by less
 * than 4.1 %.
 */
export const GUESS_PRECISION = 0.03;

/** Where every joint of a panel may be: to be shown, and taken once somebody has looked. */
export interface GuessedMarks {
  readonly kind: "guess";
  /** All joints but the load, in both views; what the panel has marked is among them as it is. */
  readonly marks: PoseMarks;
  /** `poses`: from the marked poses about it; `figure`: nothing is marked, a published figure's. */
  readonly from: "poses" | "figure";
}

/**
 * A guess for every mark of a panel. The published figure of the pose, sized as the others are and on its
 * footprint, is moved joint by joint as far as this walk's marked poses differ from theirs: those before and
 * after it by how near they are in time, and the same pose of another step. What is marked on the panel
 * already leads: a joint goes with the one that carries it, knees are solved, and both views are of one
 * height. Feet that bear are put on the ground line.
 *
 * Shapes:  the walk, and the panel's id
 * Units:   panel units; marks that are guessed carry `GUESS_PRECISION`
 * Errors:  RangeError when the panel is none of the walk's; a panel whose weight is on nobody knows which foot
 *          answers "cannot-tell"
 */
export function guessedMarks(
  walk: Walk,
  panelId: string,
  yardstick: Yardstick,
): GuessedMarks | NoReading {
  const panel = walk.panels.find(({ id }) => id === panelId);
  if (panel === undefined) {
    throw new RangeError(`guessedMarks needs a panel of the walk, got ${panelId}`);
  }
  const study = studyWalk(walk, yardstick);
  const others = walk.panels.filter((one) => one !== panel);
  const sized = sizeIn(walk, others);
  const placed = placedIn(study, panel, sized, "frame");
  if (placed.kind === "cannot-tell") return placed;
  const sources = sourcesFor(study, panel, sized);
  const guess = {
    side: asDrawn(placed.marks.side, "side", panel, sources),
    front: asDrawn(placed.marks.front, "front", panel, sources),
  };
  const marks = fitted(guess, panel, sized);
  const precision = GUESS_PRECISION * sized.legUnits;
  return {
    kind: "guess",
    from: sources.length > 0 ? "poses" : "figure",
    marks: {
      side: carrying(marks.side, panel.marks.side, precision),
      front: carrying(marks.front, panel.marks.front, precision),
    },
  };
}

/** A view's figure moved as far as the walk's own poses differ from theirs. */
function asDrawn(
  figure: ViewMarks,
  view: View,
  panel: WalkPanel,
  sources: readonly Source[],
): ViewMarks {
  return JOINTS.reduce((marks, joint) => {
    const way = wayOf(view, joint, telling(joint, panel, sources));
    return way === null ? marks : shiftedMarks(marks, [joint], way);
  }, figure);
}

/**
 * The poses that tell of a joint. A leg is told by the same pose of another step where there is one. A foot in
 * the air is told by nothing else: where it strays from the published path changes from pose to pose
 * (with its neighbours counted, its error grew from 3.0 to 5.3 % of a leg).
 */
function telling(
  joint: JointName,
  { weightOn }: WalkPanel,
  sources: readonly Source[],
): readonly Source[] {
  if (!LEGS.has(joint)) return sources;
  const same = sources.filter(({ samePose }) => samePose);
  const isFree = FEET.has(joint) && weightOn !== null && !joint.startsWith(`${weightOn}-`);
  return same.length > 0 || isFree ? same : sources;
}

const FEET: ReadonlySet<JointName> = new Set(SIDES.flatMap(footJoints));
const LEGS: ReadonlySet<JointName> = new Set([...FEET, "left-knee", "right-knee"]);

/** The mean of what several poses tell, by their weights. */
function wayOf(view: View, joint: JointName, sources: readonly Source[]): Point | null {
  const told = gathered(sources, ({ apart, weight }) => {
    const way = apart(view, joint);
    return way === null || weight === 0 ? [] : [{ ...way, weight }];
  });
  const whole = told.reduce((sum, { weight }) => sum + weight, 0);
  if (whole === 0) return null;
  return {
    x: told.reduce((sum, { x, weight }) => sum + weight * x, 0) / whole,
    y: told.reduce((sum, { y, weight }) => sum + weight * y, 0) / whole,
  };
}

/** What is marked as it is; the rest as coarse as a guess is. */
function carrying(marks: ViewMarks, own: ViewMarks, precision: number): ViewMarks {
  return Object.fromEntries(
    gathered(JOINTS, (joint) => {
      const mark = markOf(marks, joint);
      return mark === null ? [] : [[joint, markOf(own, joint) ?? { ...mark, precision }]];
    }),
  );
}
