import { type JointName, limbJoint, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import type { Reading } from "../finding";
import { placeOf } from "../ground-mark";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { type Held, holdStill } from "./hold-still";
import { setPlaces } from "./places-of";
import { type PlantedMark, plantedMarks } from "./planted-marks";

/** How far a planted mark came, and on which panel. */
export interface Travel {
  readonly panel: WalkPanel;
  /** Leg lengths along the ground, forward positive. */
  readonly measured: Reading;
}

/** Where a planted mark's travel begins, and what it comes to from there. */
export interface StanceTravel {
  readonly from: WalkPanel;
  readonly travels: readonly Travel[];
  /** Panels with the mark that could not be compared, since nothing else ties them to the others. */
  readonly untied: readonly WalkPanel[];
}

/** A mark of a planted foot, followed over some panels of its stance. */
export interface Followed {
  readonly step: Step;
  readonly side: Side;
  readonly joint: "heel" | "ball";
  /** In frame order; those that lack the mark or a place are passed over. */
  readonly panels: readonly WalkPanel[];
}

/**
 * How far a planted mark travels over the ground, from the first of some panels on.
 *
 * Where places were solved, the mark itself told where its panels are, so it cannot be seen to move against
 * them. It is held against the rest: the places are solved once more without it, and only panels that
 * still hang together are compared. The ball is held against the heel of its own foot, where that is
 * planted as well; the heel, which lands alone, against the other foot and places set by hand.
 *
 * Shapes:  `from` is the first panel that can be compared with a later one; null where none can
 * Units:   leg lengths
 * Errors:  none
 */
export function stanceTravel(study: Study, followed: Followed): StanceTravel | null {
  const joint = limbJoint(followed.side, followed.joint);
  const { walk } = study;
  const panels = followed.panels.filter((panel) => study.ground(panel, joint) !== null);
  const ground = walk.ground === "solved" ? heldWithout(study, followed) : onPlaces(study);
  const after = (panel: WalkPanel) => panels.slice(panels.indexOf(panel) + 1);
  const from = panels.find((panel) =>
    after(panel).some((one) => ground.apart(panel, one) !== null),
  );
  if (from === undefined) return null;
  const travels = gathered(after(from), (panel): Travel[] => {
    const measured = between(study, ground, { from, to: panel, joint });
    return measured === null ? [] : [{ panel, measured }];
  });
  const tied = new Set([from, ...travels.map(({ panel }) => panel)]);
  return { from, travels, untied: panels.filter((panel) => !tied.has(panel)) };
}

/** Places by which a mark's travel is told. */
type Comparison = Pick<Held, "at" | "apart">;

function onPlaces({ walk }: Study): Comparison {
  return { at: (panel) => placeOf(panel, walk), apart: () => 0 };
}

function heldWithout(study: Study, followed: Followed): Comparison {
  const isLeftOut = leftOut(followed);
  const set = setPlaces(study.walk);
  // Without set places nothing further off can tie these panels: what they share is on themselves.
  const near = set.size > 0 ? null : new Set(followed.panels);
  const marks = plantedMarks(study.walk, study.leg).filter(
    (mark) => (near === null || near.has(mark.panel)) && !isLeftOut(mark),
  );
  return holdStill(marks, set);
}

/** What told the panels' places of the mark in question, or of the foot it belongs to. */
function leftOut({ step, joint }: Followed): (mark: PlantedMark) => boolean {
  const stance = step.contact.id;
  return (mark) => mark.stance === stance && (joint === "heel" || mark.joint !== "heel");
}

interface Ends {
  readonly from: WalkPanel;
  readonly to: WalkPanel;
  readonly joint: JointName;
}

function between(study: Study, places: Comparison, { from, to, joint }: Ends): Reading | null {
  const [start, end] = [study.seen(from, joint), study.seen(to, joint)];
  const [was, is] = [places.at(from), places.at(to)];
  const spread = places.apart(from, to);
  if (start === null || end === null || was === null || is === null || spread === null) return null;
  const value = is + end.x - (was + start.x);
  const plusMinus = rootSumSquare(start.plusMinus, end.plusMinus, spread);
  return Number.isFinite(value) ? { value, plusMinus, unit: "leg" } : null;
}
