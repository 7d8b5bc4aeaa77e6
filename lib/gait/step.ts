import { otherSide, type Side } from "../body";
import { gathered } from "../gathered";
import type { PoseName, StepPose } from "../motion";
import { areSame } from "./memory";
import type { WalkPanel } from "./walk";

/** A step: from one foot's contact to the other's, as far as it was drawn. */
export interface Step {
  /** The side that receives and carries the weight; null while nobody said. */
  readonly weightOn: Side | null;
  readonly contact: WalkPanel;
  readonly down: WalkPanel | null;
  readonly passing: WalkPanel | null;
  readonly up: WalkPanel | null;
  /** The other foot's contact, where the next step begins. */
  readonly next: WalkPanel | null;
  /** Every panel from the contact up to the next contact, which is not among them. */
  readonly panels: readonly WalkPanel[];
}

/** Panels that stand before the walk itself. */
const BEFORE_THE_WALK: ReadonlySet<PoseName> = new Set(["stand", "lead-in"]);

/**
 * The steps of a walk, by the panels' labels and whose weight they carry. A contact with nothing
 * after it ends the step before and starts none.
 *
 * Shapes:  panels in frame order, steps in the same order
 * Errors:  none; what was not drawn or said is null
 */
export function findSteps(panels: readonly WalkPanel[]): readonly Step[] {
  const walking = walkingPanels(panels);
  const starts = gathered(walking, (panel, index) => (panel.pose === "contact" ? [index] : []));
  return gathered(starts, (start, nth) => {
    const end = starts[nth + 1];
    const between = walking.slice(start, end);
    const next = end === undefined ? null : (walking[end] ?? null);
    const [contact] = between;
    if (contact === undefined || (between.length === 1 && next === null)) return [];
    return [sameStep(contact, between, next)];
  });
}

interface Found {
  readonly panels: readonly WalkPanel[];
  /** The panel after them, whether or not it ends the step. */
  readonly after: WalkPanel | null;
  readonly step: Step;
}

/** The step that a contact began when it was last looked at. */
const stepOfContact = new WeakMap<WalkPanel, Found>();

/** A step of the same panels is the same step from one look to the next, so it is known by its identity. */
function sameStep(contact: WalkPanel, panels: readonly WalkPanel[], after: WalkPanel | null): Step {
  const before = stepOfContact.get(contact);
  if (before?.after === after && areSame(before.panels, panels)) return before.step;
  const step = stepOf(contact, panels, after);
  stepOfContact.set(contact, { panels, after, step });
  return step;
}

/** The panels of the walk itself, without stands and lead-ins. */
export function walkingPanels(panels: readonly WalkPanel[]): readonly WalkPanel[] {
  return panels.filter((panel) => !BEFORE_THE_WALK.has(panel.pose));
}

function stepOf(contact: WalkPanel, panels: readonly WalkPanel[], next: WalkPanel | null): Step {
  const inner = panels.slice(1);
  const weightOn = contact.weightOn ?? agreedSide(inner);
  const carried = inner.filter(
    (panel) => weightOn === null || panel.weightOn === null || panel.weightOn === weightOn,
  );
  const first = (pose: StepPose) => carried.find((panel) => panel.pose === pose) ?? null;
  return {
    weightOn,
    contact,
    down: first("down"),
    passing: first("passing"),
    up: first("up"),
    next: landsOnTheOther(weightOn, next) ? next : null,
    panels,
  };
}

/** The side that every panel which names one agrees on. */
export function agreedSide(panels: readonly WalkPanel[]): Side | null {
  const sides = new Set(panels.map((panel) => panel.weightOn).filter((side) => side !== null));
  const [only, second] = [...sides];
  return second === undefined ? (only ?? null) : null;
}

/** Twice the same foot is a hop or a missing contact, not a step. */
function landsOnTheOther(weightOn: Side | null, next: WalkPanel | null): boolean {
  if (next === null || next.weightOn === null || weightOn === null) return true;
  return next.weightOn === otherSide(weightOn);
}
