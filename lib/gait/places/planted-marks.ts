import { type LegLength, limbJoint, otherSide, type Side } from "../../body";
import { gathered } from "../../gathered";
import { seenMark } from "../seen-mark";
import { findSteps, type Step } from "../step";
import type { Walk, WalkPanel } from "../walk";

type FootJoint = "heel" | "ball" | "toe";

/** A mark that stands still on the ground for as long as its foot is planted, on one panel. */
export interface PlantedMark {
  readonly panel: WalkPanel;
  /** The contact by which the foot was put down, and whose foot it is. */
  readonly stance: string;
  readonly side: Side;
  readonly joint: FootJoint;
  /** Leg lengths ahead of the panel's middle. */
  readonly x: number;
  /** Leg lengths: how exactly it was placed, and how still such a mark stands. */
  readonly plusMinus: number;
}

/**
 * How still a planted foot's marks stand from pose to pose, leg lengths: the root mean square of how far
 * each travels, over √2 for its two ends.
 * Source: the poses of five captured walks, 22 steps: the heel from contact to passing 1.6 %, from down to
 * passing the ball 2.4 %, the toe 2.9 % of a leg. On to the next contact and its down the ball goes 0.8 and
 * 0.3 %, the toe 1.4 and 1.0 %.
 */
const STILL: Readonly<Record<FootJoint, number>> = { heel: 0.011, ball: 0.017, toe: 0.02 };

/**
 * Share of a step up to which a down still has the other toe on the ground: the latest down of 317
 * captured steps. The trade's down, at a quarter, has it in the air.
 */
const BOTH_DOWN_UNTIL = 0.18;

const FRONT: readonly FootJoint[] = ["ball", "toe"];

/**
 * The marks that hold a walk's panels to the ground: of each step the heel from its contact to its passing,
 * while the foot rolls and lies flat; ball and toe from its down to the other foot's contact, where both
 * feet are down, and to a down that comes at once. A lead-in's standing foot is planted from the stand on.
 *
 * Shapes:  marks in the order of stances, of one that is on the strip twice or more
 * Units:   leg lengths
 * Errors:  none; without a leg length, a side or marks there are none
 */
export function plantedMarks(walk: Pick<Walk, "panels">, leg: LegLength): readonly PlantedMark[] {
  if (leg.kind === "cannot-tell") return [];
  const known = knownMarks.get(walk.panels);
  if (known !== undefined && known.legUnits === leg.value) return known.marks;
  const marks = marksOf(walk, leg);
  knownMarks.set(walk.panels, { legUnits: leg.value, marks });
  return marks;
}

/** What was planted on a list of panels, for as long as somebody holds the list. */
const knownMarks = new WeakMap<
  readonly WalkPanel[],
  { readonly legUnits: number; readonly marks: readonly PlantedMark[] }
>();

function marksOf(walk: Pick<Walk, "panels">, leg: LegLength): readonly PlantedMark[] {
  const steps = findSteps(walk.panels);
  const planted = [
    ...leadIn(walk, steps),
    ...gathered(steps, (step, at) => ofStep(step, steps[at + 1])),
  ];
  const marks = gathered(planted, ({ panel, stance, side, joint }): PlantedMark[] => {
    const mark = seenMark(panel, limbJoint(side, joint), leg);
    if (mark === null) return [];
    const plusMinus = Math.hypot(mark.plusMinus, STILL[joint]);
    return [{ panel, stance, side, joint, x: mark.x, plusMinus }];
  });
  const count = new Map<string, number>();
  for (const mark of marks) count.set(printOf(mark), (count.get(printOf(mark)) ?? 0) + 1);
  return marks.filter((mark) => (count.get(printOf(mark)) ?? 0) > 1);
}

/** What is the same for all marks of one footprint. */
export function printOf({ stance, joint }: Pick<PlantedMark, "stance" | "joint">): string {
  return `${stance} ${joint}`;
}

type Planted = Pick<PlantedMark, "panel" | "stance" | "side" | "joint">;

function ofStep(step: Step, following: Step | undefined): Planted[] {
  const { weightOn: side, contact, down, passing, next } = step;
  if (side === null) return [];
  const own = step.panels.filter(({ weightOn }) => weightOn !== otherSide(side));
  const lifts = passing ?? down ?? contact;
  const rolled = down ?? passing ?? step.up;
  const heel = own.slice(0, own.indexOf(lifts) + 1);
  const front = rolled === null ? [] : own.slice(own.indexOf(rolled));
  const stance = contact.id;
  const at = (joints: readonly FootJoint[]) => (panel: WalkPanel) =>
    joints.map((joint): Planted => ({ panel, stance, side, joint }));
  return [
    ...gathered(heel, at(["heel"])),
    ...gathered([...front, ...leaving(next, following)], at(FRONT)),
  ];
}

/** Where the foot behind is still down in the step after its own. */
function leaving(next: WalkPanel | null, following: Step | undefined): WalkPanel[] {
  if (next === null) return [];
  const down = following?.contact === next ? following.down : null;
  const end = following?.next ?? null;
  if (down === null || end === null) return [next];
  const share = (down.frame - next.frame) / (end.frame - next.frame);
  return share <= BOTH_DOWN_UNTIL ? [next, down] : [next];
}

/** The foot that stands while the other goes to its first contact. */
function leadIn({ panels }: Pick<Walk, "panels">, [first]: readonly Step[]): Planted[] {
  if (first === undefined || first.weightOn === null) return [];
  const side = otherSide(first.weightOn);
  const before = panels.slice(0, panels.indexOf(first.contact));
  const leads = before.filter(({ pose, weightOn }) => pose === "lead-in" && weightOn === side);
  const start = leads[0];
  if (start === undefined) return [];
  const stands = before.filter(({ pose }) => pose === "stand").slice(-1);
  const at = (joints: readonly FootJoint[]) => (panel: WalkPanel) =>
    joints.map((joint): Planted => ({ panel, stance: start.id, side, joint }));
  return [...gathered([...stands, ...leads], at(["heel", ...FRONT])), ...at(FRONT)(first.contact)];
}
