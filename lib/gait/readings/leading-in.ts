import { type JointName, type LimbJoint, limbJoint, otherSide, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import type { Reading } from "../finding";
import { footState } from "../foot-state";
import { type FrontMark, frontMark } from "../front-mark";
import { placesOf } from "../places/places-of";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { groundBetween } from "./ground-between";

/** How a walk sets off: from a stand, by lead-ins, to its first contact. */
export interface LeadingIn {
  readonly stand: WalkPanel | null;
  /** The lead-ins before the first contact, in order. */
  readonly leads: readonly WalkPanel[];
  /** Those at the first contact and after it. */
  readonly astray: readonly WalkPanel[];
  readonly contact: WalkPanel | null;
  /** The foot that stays while the other steps off; null while nobody said. */
  readonly stays: Side | null;
}

/** How the panels lead in, by their labels alone. */
export function leadingIn(panels: readonly WalkPanel[]): LeadingIn {
  const contact = panels.find(({ pose }) => pose === "contact") ?? null;
  const all = panels.filter(({ pose }) => pose === "lead-in");
  const leads = all.filter(({ frame }) => contact === null || frame < contact.frame);
  const [first] = leads;
  const before = first === undefined ? [] : panels.slice(0, panels.indexOf(first));
  const said = leads.find(({ weightOn }) => weightOn !== null)?.weightOn ?? null;
  const lands = contact?.weightOn ?? null;
  return {
    stand: before.findLast(({ pose }) => pose === "stand") ?? null,
    leads,
    astray: all.filter((panel) => !leads.includes(panel)),
    contact,
    stays: said ?? (lands === null ? null : otherSide(lands)),
  };
}

/** How far something has come since the stand, and where that is seen. Leg lengths. */
export interface SinceStand {
  readonly panel: WalkPanel;
  readonly measured: Reading;
  readonly joints: readonly JointName[];
}

/** What stays where it is until the toe leaves, and what of a foot is read from the front. */
const FRONT: readonly LimbJoint[] = ["ball", "toe"];
const WHOLE: readonly LimbJoint[] = ["ankle", "heel", "ball", "toe"];

/**
 * How far the foot that stays went along the ground since the stand, forward positive: at each lead-in, and
 * at the first contact. Only where a hand has placed the panels: by the travel alone a stand would slide, and
 * a place that was solved from this foot says nothing of it. On the spot there are no such places, and nothing
 * is asked: where the ground begins to slide under a stand, a strip does not say.
 *
 * Errors:  null where stand or lead-ins have no such place, or no mark of the foot in common
 */
export function footSinceStand(
  study: Study,
  { stand, leads, contact }: LeadingIn,
  side: Side,
): readonly SinceStand[] | null {
  const { travel, ground } = study.walk;
  if (travel === "on-the-spot" && ground !== "solved") return [];
  const placeOf = placesOf(study.walk);
  const isSet = (panel: WalkPanel) => placeOf(panel).kind === "set";
  if (stand === null || !isSet(stand) || !leads.every(isSet)) return null;
  const later = contact !== null && isSet(contact) ? [...leads, contact] : leads;
  const told = later.map((panel) => travelled(study, stand, panel, side));
  const read = told.filter((one) => one !== null);
  return leads.some((_, nth) => told[nth] === null) ? null : read;
}

function travelled(
  study: Study,
  stand: WalkPanel,
  panel: WalkPanel,
  side: Side,
): SinceStand | null {
  const pairs = gathered(FRONT, (part) => {
    const joint = limbJoint(side, part);
    const [was, is] = [study.seen(stand, joint), study.seen(panel, joint)];
    if (was === null || is === null) return [];
    const by = groundBetween(study, { ...was, panel: stand }, { ...is, panel });
    return by === null ? [] : [{ joint, ...by }];
  });
  const [first] = pairs;
  if (first === undefined) return null;
  const measured = meanOf(pairs);
  return { panel, measured, joints: [first.joint] };
}

function meanOf(parts: readonly Omit<Reading, "unit">[]): Reading {
  const value = parts.reduce((sum, one) => sum + one.value, 0) / parts.length;
  const plusMinus = rootSumSquare(...parts.map((one) => one.plusMinus)) / parts.length;
  return { value, plusMinus, unit: "leg" };
}

const HIPS: readonly JointName[] = ["left-hip", "right-hip"];

/**
 * How far the hips came toward the foot that stays since the stand, seen from the front: at the first lead-in
 * that has the other foot off the ground, or at the last one. Counted from the foot, so it does not matter
 * where on the paper the panels are drawn.
 *
 * Errors:  null where hips or foot are not marked from the front on both
 */
export function hipsSinceStand(
  study: Study,
  { stand, leads }: LeadingIn,
  side: Side,
): SinceStand | null {
  const lifted = leads.find((panel) => isUp(study, panel, otherSide(side)));
  const panel = lifted ?? leads.at(-1);
  if (stand === null || panel === undefined) return null;
  const seen = (on: WalkPanel, joint: JointName) => frontMark(on, joint, study.leg);
  const hips = gathered([stand, panel], (on) => HIPS.map((joint) => seen(on, joint)));
  const foot = gathered(
    WHOLE.map((part) => limbJoint(side, part)),
    (joint) => {
      const pair = [seen(stand, joint), seen(panel, joint)].filter((mark) => mark !== null);
      return pair.length === 2 ? [pair] : [];
    },
  );
  const [left, right, leftNow, rightNow] = hips;
  if (!left || !right || !leftNow || !rightNow || foot.length === 0) return null;
  const body = meanOf([between(left, leftNow), between(right, rightNow)]);
  const ground = meanOf(foot.map(([was, is]) => between(was, is)));
  const toward = side === "right" ? 1 : -1; // z runs to the walker's right
  const measured: Reading = {
    value: toward * (body.value - ground.value),
    plusMinus: rootSumSquare(body.plusMinus, ground.plusMinus),
    unit: "leg",
  };
  return { panel, measured, joints: HIPS };
}

function isUp(study: Study, panel: WalkPanel, side: Side): boolean {
  const state = footState(study, panel, side);
  return state.kind === "value" && state.state === "air";
}

function between(was: FrontMark | undefined, is: FrontMark | undefined): Omit<Reading, "unit"> {
  if (was === undefined || is === undefined) return { value: Number.NaN, plusMinus: 0 };
  return { value: is.z - was.z, plusMinus: rootSumSquare(was.plusMinus, is.plusMinus) };
}
