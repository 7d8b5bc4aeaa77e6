import { type LimbJoint, limbJoint, SIDES, type Side } from "../body";
import { gathered } from "../gathered";
import { median, rootSumSquare } from "../geometry";
import { type FrontMark, frontMark } from "./front-mark";
import { areSame } from "./memory";
import type { Study } from "./study";
import type { WalkPanel } from "./walk";

/** The bones of arms and legs whose lengths are told. */
export const LIMB_BONES = ["thigh", "shank", "upper arm", "forearm"] as const;
export type LimbBone = (typeof LIMB_BONES)[number];

/** The joints that a bone runs between, the upper first. */
export const BONE_ENDS: Readonly<Record<LimbBone, readonly [LimbJoint, LimbJoint]>> = {
  thigh: ["hip", "knee"],
  shank: ["knee", "ankle"],
  "upper arm": ["shoulder", "elbow"],
  forearm: ["elbow", "wrist"],
};

/** A bone's length as it is seen. Leg lengths, ± likewise. */
export interface BoneLength {
  readonly value: number;
  readonly plusMinus: number;
}

/** How long a bone of this figure is, and where that was read. */
export interface TrueLength extends BoneLength {
  /** `stand`: the mean of both sides there; `panels`: the median over the poses. */
  readonly from: "stand" | "panels";
}

/** A bone of one panel: with its depth where that is told, as seen from ahead, and the depth alone. */
interface BoneSeen {
  readonly length: BoneLength | null;
  readonly ahead: BoneLength | null;
  readonly depth: BoneLength | null;
}

/** What is seen of a panel's bones. */
export type PanelBones = Readonly<Record<Side, Readonly<Record<LimbBone, BoneSeen>>>>;

function readBones(study: Study, panel: WalkPanel): PanelBones {
  const of = (side: Side) => ({
    thigh: readBone(study, panel, side, "thigh"),
    shank: readBone(study, panel, side, "shank"),
    "upper arm": readBone(study, panel, side, "upper arm"),
    forearm: readBone(study, panel, side, "forearm"),
  });
  return { left: of("left"), right: of("right") };
}

function readBone(study: Study, panel: WalkPanel, side: Side, bone: LimbBone): BoneSeen {
  const [upper, lower] = BONE_ENDS[bone];
  const [from, to] = [limbJoint(side, upper), limbJoint(side, lower)];
  const ahead = lineBetween(frontMark(panel, from, study.leg), frontMark(panel, to, study.leg));
  const beside = lineBetween(asFront(study.seen(panel, from)), asFront(study.seen(panel, to)));
  return {
    length: beside === null ? null : withDepth(beside, ahead?.aside ?? 0, ahead?.plusMinus ?? 0),
    ahead: ahead === null ? null : withDepth(ahead, 0, 0),
    depth: ahead === null ? null : { value: ahead.aside, plusMinus: ahead.plusMinus },
  };
}

interface Line {
  readonly aside: number;
  readonly up: number;
  readonly plusMinus: number;
}

function asFront(mark: ReturnType<Study["seen"]>): FrontMark | null {
  return mark === null ? null : { z: mark.x, y: mark.y, plusMinus: mark.plusMinus };
}

function lineBetween(from: FrontMark | null, to: FrontMark | null): Line | null {
  if (from === null || to === null) return null;
  const plusMinus = rootSumSquare(from.plusMinus, to.plusMinus);
  return { aside: Math.abs(to.z - from.z), up: to.y - from.y, plusMinus };
}

function withDepth(line: Line, depth: number, depthPlusMinus: number): BoneLength | null {
  const flat = rootSumSquare(line.aside, line.up);
  const value = rootSumSquare(flat, depth);
  if (!(value > 0)) return null;
  const plusMinus = rootSumSquare(flat * line.plusMinus, depth * depthPlusMinus) / value;
  return { value, plusMinus };
}

/** All of a panel's bones at once, for what asks for many. */
export function panelBones(study: Study, panel: WalkPanel): PanelBones {
  return study.once(panel, readBones);
}

/** How far apart a bone's ends lie in the depth that the side view does not show, from ahead; null unmarked. */
export function boneDepth(study: Study, panel: WalkPanel, side: Side, bone: LimbBone) {
  return study.once(panel, readBones)[side][bone].depth;
}

/**
 * A bone of a panel as the side view has it, with its depth where the front view has both ends marked: an arm
 * that reaches aside is only seen shorter. Null where an end is not marked from the side. Leg lengths.
 */
export function boneLength(study: Study, panel: WalkPanel, side: Side, bone: LimbBone) {
  return study.once(panel, readBones)[side][bone].length;
}

/** A bone as it is seen from ahead: never longer than it is. Leg lengths; null where an end is not marked. */
export function boneAhead(study: Study, panel: WalkPanel, side: Side, bone: LimbBone) {
  return study.once(panel, readBones)[side][bone].ahead;
}

export type TrueLengths = Readonly<Record<LimbBone, TrueLength | null>>;

const known = new WeakMap<Study, TrueLengths>();

/** What was told of a walk with this first panel: the same lengths are the same object, and known by it. */
const toldBefore = new WeakMap<WalkPanel, TrueLengths>();

/**
 * How long the figure's bones are: as the stand has them, the mean of left and right, since one figure has
 * both alike; without a stand the median over the poses. Null where fewer than two lengths could be read.
 *
 * Units:   leg lengths
 * Source:  245 captured strides of 15 people: seen from the side thigh and shank never read below 0.97 of
 *          their length
 */
export function trueLengths(study: Study): TrueLengths {
  const before = known.get(study);
  if (before !== undefined) return before;
  const told = lengthsOf(study);
  known.set(study, told);
  return told;
}

function lengthsOf(study: Study): TrueLengths {
  const told = Object.fromEntries(
    LIMB_BONES.map((bone) => [bone, onStand(study, bone) ?? overPanels(study, bone)]),
  ) as TrueLengths;
  const [first] = study.walk.panels;
  if (first === undefined) return told;
  const before = toldBefore.get(first);
  if (before !== undefined && LIMB_BONES.every((bone) => areAlike(before[bone], told[bone]))) {
    return before;
  }
  toldBefore.set(first, told);
  return told;
}

function areAlike(one: TrueLength | null, other: TrueLength | null): boolean {
  if (one === null || other === null) return one === other;
  return areSame([one.value, one.plusMinus, one.from], [other.value, other.plusMinus, other.from]);
}

function onStand(study: Study, bone: LimbBone): TrueLength | null {
  const stands = study.walk.panels.filter(({ pose }) => pose === "stand");
  const told = stands.map((stand) => study.once(stand, bonesOnStand)[bone]);
  const seen = told.find(({ beside }) => beside !== null)?.beside;
  return seen ?? told.find(({ ahead }) => ahead !== null)?.ahead ?? null;
}

/** The bones of a stand, the mean of both sides, as either view shows them. */
function bonesOnStand(study: Study, stand: WalkPanel) {
  const of = (bone: LimbBone) => ({
    beside: meanOf(bothSides(study, stand, bone, boneLength)),
    ahead: meanOf(bothSides(study, stand, bone, boneAhead)),
  });
  return {
    thigh: of("thigh"),
    shank: of("shank"),
    "upper arm": of("upper arm"),
    forearm: of("forearm"),
  };
}

function meanOf(seen: readonly BoneLength[]): TrueLength | null {
  if (seen.length === 0) return null;
  const value = seen.reduce((sum, one) => sum + one.value, 0) / seen.length;
  const plusMinus = rootSumSquare(...seen.map((one) => one.plusMinus)) / seen.length;
  return { value, plusMinus, from: "stand" };
}

function overPanels(study: Study, bone: LimbBone): TrueLength | null {
  const seen = gathered(study.walk.panels, (panel) => bothSides(study, panel, bone, boneLength));
  if (seen.length < 2) return null;
  return {
    value: median(seen.map(({ value }) => value)),
    // The median's own scatter is smaller; one bone's ± is the honest upper bound.
    plusMinus: median(seen.map(({ plusMinus }) => plusMinus)),
    from: "panels",
  };
}

function bothSides(
  study: Study,
  panel: WalkPanel,
  bone: LimbBone,
  read: typeof boneLength,
): BoneLength[] {
  return SIDES.map((side) => read(study, panel, side, bone)).filter((length) => length !== null);
}
