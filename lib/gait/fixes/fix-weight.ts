import { centreOfMass, limbJoint, SIDES, type Side, sideToGround } from "../../body";
import type { Remark } from "../finding";
import { feetAlong, footPoints } from "../foot";
import { frontMark } from "../front-mark";
import { hipsAlong, ONE_HIP_ALONG } from "../hips-along";
import type { Step } from "../step";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { percent, sided } from "../words";
import { asInItsRule } from "./fix-weight-by-rule";
import { moveBody } from "./move-pose";
import { movedPanel, type Proposal } from "./proposal";

/** Where people carry it at passing, leg lengths ahead of the standing ankle (317 captured steps). */
const AHEAD = 0.093;

/**
 * How far from the middle between the feet toward the standing one people have their hips at passing,
 * as a share of that way: about half (0.58 ± 0.20 of half the step's width, 15 people).
 */
const TOWARD = 0.58;

/** The farthest from the standing ankle that they are put, leg lengths: well inside the 8 % that pass. */
const NEAR = 0.06;

/**
 * Weight that is not over the feet, or not as in the step that it goes by: the body shifted over them, feet
 * kept and knees solved.
 */
export function fixWeight(study: Study, { check, panels, side }: Remark): readonly Proposal[] {
  const panel = study.walk.panels.find(({ id }) => id === panels.at(-1));
  const { leg } = study;
  if (panel === undefined || leg.kind === "cannot-tell") return [];
  const step = study.steps.find((one) => one.panels.includes(panel));
  if (study.pattern !== null && step !== undefined) return asInItsRule(study, step, check);
  const by =
    check === "weight-front" ? asideBy(study, step, panel, side) : forwardBy(study, panel, side);
  if (by === null) return [];
  const front = check === "weight-front";
  const units = by * leg.value;
  const moved = moveBody(panel, {
    forward: front ? 0 : units,
    up: 0,
    aside: front ? -units : 0, // the walker's right lies to the left of the front view
  });
  const way = front ? (by > 0 ? "to the right" : "to the left") : by > 0 ? "forward" : "back";
  const amount = percent({ value: by, plusMinus: 0 });
  const title = `Shift the body of the ${sided(side, panel.pose)} ${way} by ${amount} of a leg`;
  return [movedPanel(panel, moved, title, leg)];
}

/**
 * The panel with its hips where people carry them at passing, feet kept and knees solved; as it is where
 * the marks do not say where they are.
 */
export function overTheFoot(study: Study, panel: WalkPanel, side: Side): WalkPanel["marks"] {
  const by = forwardBy(study, panel, side);
  if (by === null || study.leg.kind === "cannot-tell") return panel.marks;
  return moveBody(panel, { forward: by * study.leg.value, up: 0, aside: 0 }).marks;
}

/** How far the body is to go along the walk, leg lengths; null where that cannot be told. */
function forwardBy(study: Study, panel: WalkPanel, side: Side | null): number | null {
  if (panel.pose === "stand") return standBy(study, panel);
  const passing = panel.pose === "passing";
  const hips = hipsAlong(study, panel, ONE_HIP_ALONG[passing ? "passing" : "contact"]);
  if (hips === null) return null;
  if (!passing || side === null) {
    const feet = feetAlong(panel, study.leg);
    return feet === null ? null : (feet.left.x + feet.right.x) / 2 - hips.x;
  }
  const at = (part: "ankle" | "heel" | "toe") => study.seen(panel, limbJoint(side, part));
  const ankle = at("ankle");
  if (ankle !== null) return ankle.x + AHEAD - hips.x;
  const [heel, toe] = [at("heel"), at("toe")];
  return heel === null || toe === null ? null : (heel.x + toe.x) / 2 - hips.x;
}

/** The centre of mass over the middle of the feet. The feet stay, so the body goes a little farther. */
function standBy({ leg, walk }: Study, stand: WalkPanel): number | null {
  const mass = centreOfMass(stand.marks.side, { load: walk.load ?? 0 });
  if (mass === null || leg.kind === "cannot-tell") return null;
  const soles = SIDES.flatMap((side) => footPoints(stand, side, leg)).map(({ x }) => x);
  const middle = (Math.min(...soles) + Math.max(...soles)) / 2;
  const { x } = sideToGround(mass, { place: 0, legLength: leg.value });
  return Number.isFinite(middle) ? (middle - x) / CARRIED : null;
}

/** Share of the mass that goes along when the hips do: all but the feet and half of the shanks. */
const CARRIED = 0.93;

/** How far the body is to go to the walker's right, leg lengths. */
function asideBy(
  { leg }: Study,
  step: Step | undefined,
  panel: WalkPanel,
  side: Side | null,
): number | null {
  if (step === undefined || side === null) return null;
  const toward = side === "right" ? 1 : -1;
  const hips = hipsAcross(panel, leg);
  const ankle = footAcross(panel, side, leg);
  const other = side === "left" ? "right" : "left";
  const others = [step.contact, step.next].flatMap((contact) => {
    const z = contact === null ? null : footAcross(contact, other, leg);
    return z === null ? [] : [z];
  });
  if (hips === null || ankle === null) return null;
  const mean = others.length === 0 ? ankle : others.reduce((sum, z) => sum + z, 0) / others.length;
  const middle = (ankle + mean) / 2;
  const before = hipsAcross(step.contact, leg) ?? middle;
  // Counted toward the standing foot: half-way, and not back from where they were at contact.
  const wished = Math.max(toward * (middle + TOWARD * (ankle - middle)), toward * before);
  const near = Math.min(toward * ankle + NEAR, Math.max(toward * ankle - NEAR, wished));
  return toward * near - hips;
}

function hipsAcross(panel: WalkPanel, leg: Study["leg"]): number | null {
  const left = frontMark(panel, "left-hip", leg);
  const right = frontMark(panel, "right-hip", leg);
  return left === null || right === null ? null : (left.z + right.z) / 2;
}

function footAcross(panel: WalkPanel, side: Side, leg: Study["leg"]): number | null {
  const parts = ["ankle", "ball", "heel", "toe"] as const;
  const found = parts.map((part) => frontMark(panel, limbJoint(side, part), leg));
  return found.find((mark) => mark !== null)?.z ?? null;
}
