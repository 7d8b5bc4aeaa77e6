import {
  footJoints,
  hundredth,
  type JointName,
  limbJoint,
  type Side,
  shiftedMarks,
} from "../../body";
import {
  findSteps,
  groundMark,
  type Step,
  stanceOf,
  type WalkPanel,
  walkLegLength,
} from "../../gait";
import type { PanelId, Sheet } from "../sheet";
import { walkOf } from "../walk-of";
import { frontFollows, withKnee } from "./leg-follows";
import { isRefusal, type PassOn, passingTo } from "./passing";

/** Nearer than this the foot is where it was put down: finer than a mark is placed. Leg lengths. */
const THERE = 0.0005;

/** Where a foot was put down, and by which of its marks that is told. */
interface Print {
  readonly panel: WalkPanel;
  readonly joint: JointName;
}

/**
 * The pose with a planted foot moved, as it is, onto the place on the ground where it was put down:
 * the ball as it lies on the down, or, up to the passing, the heel as it lies on the contact. The knee
 * is solved and the front view's foot follows in height.
 *
 * Units:   panel units
 * Errors:  none; answers "cannot-tell" or "cannot" with what is needed or stands against it
 */
export function footOnPrint(sheet: Sheet, panelId: PanelId, side: Side): PassOn {
  const walk = walkOf(sheet);
  const panel = sheet.panels.find(({ id }) => id === panelId);
  if (panel === undefined) return { kind: "cannot", why: "the panel has left the strip" };
  const leg = walkLegLength(walk);
  if (leg.kind === "cannot-tell") return leg;
  const stance = stanceOf(findSteps(walk.panels), panel, side);
  if (stance === null) {
    return { kind: "cannot", why: `the ${side} foot is not told to be planted here` };
  }
  if (stance.contact === panel) {
    return { kind: "cannot", why: `here the ${side} foot is put down: this is its footprint` };
  }
  const ground = (one: WalkPanel, joint: JointName) => groundMark(one, joint, walk, leg);
  const print = printsFor(stance, panel, side).find(
    (one) => ground(one.panel, one.joint) !== null && ground(panel, one.joint) !== null,
  );
  const there = print === undefined ? null : ground(print.panel, print.joint);
  const here = print === undefined ? null : ground(panel, print.joint);
  if (there === null || here === null) return { kind: "cannot-tell", needs: needsOf(side) };
  const way = { x: there.x - here.x, y: there.y - here.y };
  if (Math.hypot(way.x, way.y) < THERE) {
    return { kind: "cannot", why: "the foot stands on its footprint already" };
  }
  const foot = footJoints(side);
  const units = { x: hundredth(way.x * leg.value), y: -hundredth(way.y * leg.value) };
  const moved = shiftedMarks(panel.marks.side, foot, units);
  const solved = withKnee(panel.marks.side, moved, side, leg.value);
  if (isRefusal(solved)) return solved;
  return passingTo(panel, frontFollows(panel.marks, solved, [limbJoint(side, "knee"), ...foot]));
}

function needsOf(side: Side): string {
  return `the ${side} ball or heel marked here and where the foot was put down, and a place for both panels`;
}

/** Where the foot may be looked for, the best first. */
function printsFor(step: Step, panel: WalkPanel, side: Side): Print[] {
  const flat = step.passing === null || panel.frame <= step.passing.frame;
  const at = (panels: readonly (WalkPanel | null)[], part: "ball" | "heel" | "toe") =>
    panels.flatMap((one) =>
      one === null || one === panel || one.frame >= panel.frame
        ? []
        : [{ panel: one, joint: limbJoint(side, part) }],
    );
  const standing = [step.down, step.passing];
  return [
    ...at(standing, "ball"),
    ...(flat ? at([step.down, step.contact], "heel") : []),
    ...at(standing, "toe"),
  ];
}
