import { limbJoint, otherSide, type Side } from "../../body";
import { gathered } from "../../gathered";
import { clearlyBeyond, greatestFirst } from "../beyond";
import { byPattern } from "../by-pattern";
import type { Finding, Level, Remark } from "../finding";
import { type FootPoint, footPoints } from "../foot";
import { footState } from "../foot-state";
import { CLEARANCE_SOURCE, DRAGS, LIFTS } from "../methods/clearance";
import { isQuiet } from "../quiet";
import type { Step } from "../step";
import type { Study } from "../study";
import { CLEARANCE_TRAITS } from "../traits/foot-traits";
import type { WalkPanel } from "../walk";
import { capital, percent } from "../words";
import { cannotTell, NEEDS_A_SIDE, NEEDS_A_STEP, sound } from "./answers";

/**
 * Does the foot that swings clear the ground in mid swing? Below it the toe drags through the floor; high
 * over it at passing it is lifted more than a walk spends.
 *
 * Shapes:  one answer a step, by its lowest or highest pose
 * Units:   leg lengths over the ground
 * Errors:  none; without a passing, or a toe or ball of the swing foot there, it answers "cannot-tell"
 * Source:  beside the limits, in its method
 */
export function clearance(study: Study): readonly Finding[] {
  const { walk, steps } = study;
  if (isQuiet(walk.kind, "clearance")) return [];
  if (study.pattern !== null) {
    return byPattern(study, study.pattern, "clearance", CLEARANCE_TRAITS);
  }
  if (steps.length === 0) {
    return [cannotTell({ check: "clearance", side: null, panels: [] }, NEEDS_A_STEP)];
  }
  return study.inSteps(judge);
}

/** A pose of the swing, and the point whose height is told. */
interface Swung {
  readonly panel: WalkPanel;
  readonly point: FootPoint;
  /** The limit that it is beyond, and by how much; null of none. */
  readonly broken: { readonly level: Level; readonly limit: number; readonly by: number } | null;
}

function judge(study: Study, step: Step): Finding {
  const { weightOn, passing, contact } = step;
  if (weightOn === null) {
    return cannotTell({ check: "clearance", side: null, panels: [contact] }, NEEDS_A_SIDE);
  }
  const side = otherSide(weightOn);
  if (study.leg.kind === "cannot-tell") {
    return cannotTell({ check: "clearance", side, panels: [contact] }, study.leg.needs);
  }
  const swing = step.panels.filter((panel) => swings(study, panel, side));
  const read = gathered(swing, (panel) => swung(study, panel, side));
  const atPassing = read.find(({ panel }) => panel === passing);
  if (passing === null || atPassing === undefined) {
    const about = { check: "clearance", side, panels: [passing ?? contact] } as const;
    return cannotTell(about, `the ${side} toe marked at the ${weightOn} passing, in the side view`);
  }
  const [worst] = read
    .filter(({ broken }) => broken !== null)
    .toSorted((a, b) => gravestFirst(a.broken, b.broken));
  if (worst !== undefined) return remarkOn(study, side, worst);
  const { point } = atPassing;
  const measured = { value: point.y, plusMinus: point.plusMinus, unit: "leg" } as const;
  return sound({ check: "clearance", side, panels: read.map(({ panel }) => panel) }, measured);
}

/** By level, then by how far beyond: each is counted from its own limit, so that alone would not do. */
function gravestFirst(a: Swung["broken"], b: Swung["broken"]): number {
  const shows = (one: Swung["broken"]) => (one?.level === "shows" ? 1 : 0);
  return shows(b) - shows(a) || greatestFirst(a?.by ?? 0, b?.by ?? 0);
}

/** Mid swing: the poses between the foot's leaving and its landing. */
function swings(study: Study, panel: WalkPanel, side: Side): boolean {
  if (panel.weightOn === side) return false;
  if (panel.pose === "passing" || panel.pose === "up") return true;
  if (panel.pose !== "breakdown" || panel.weightOn === null) return false;
  const foot = footState(study, panel, side);
  return foot.kind === "value" && foot.state === "air";
}

function swung({ leg }: Study, panel: WalkPanel, side: Side): Swung[] {
  const points = footPoints(panel, side, leg);
  const point = points.find(({ joint }) => joint === "toe") ?? points.find(isBall);
  if (point === undefined) return [];
  return [{ panel, point, broken: brokenBy(point, panel) }];
}

function isBall({ joint }: FootPoint): boolean {
  return joint === "ball";
}

function brokenBy({ y, plusMinus }: FootPoint, { pose }: WalkPanel): Swung["broken"] {
  const drags = DRAGS.find(({ value }) => clearlyBeyond(-y, plusMinus, value));
  if (drags !== undefined) {
    return { level: drags.level, limit: -drags.value, by: (-y - drags.value) / drags.value };
  }
  const high = pose === "passing" && clearlyBeyond(y, plusMinus, LIFTS);
  return high ? { level: "may-show", limit: LIFTS, by: (y - LIFTS) / LIFTS } : null;
}

function remarkOn({ yardstick }: Study, side: Side, { panel, point, broken }: Swung): Remark {
  const { level, limit, by } = broken ?? { level: "may-show", limit: LIFTS, by: 0 };
  const drags = limit < 0;
  const measured = { value: point.y, plusMinus: point.plusMinus, unit: "leg" } as const;
  const bound = percent({ value: limit, plusMinus: 0 });
  const told = drags
    ? `is ${percent(measured)} of a leg under the ground while it swings; up to ${bound} passes. The toe ${level === "shows" ? "will" : "may"} be seen to drag through the floor.`
    : `is ${percent(measured)} of a leg over the ground; up to ${bound} passes. The foot may seem to be lifted more than a walk needs.`;
  return {
    kind: "remark",
    check: "clearance",
    level,
    yardstick,
    side,
    panels: [panel.id],
    frames: [panel.frame],
    spots: [{ panel: panel.id, view: "side", joints: [limbJoint(side, point.joint)] }],
    measured,
    expected: { value: limit, plusMinus: 0, unit: "leg" },
    title: capital(drags ? `${side} toe drags` : `${side} foot lifted high`),
    why: `At frame ${panel.frame} the ${side} ${point.joint} ${told}`,
    source: CLEARANCE_SOURCE,
    beyond: by,
  };
}
