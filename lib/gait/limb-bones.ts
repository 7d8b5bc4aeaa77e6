import { type LimbJoint, limbJoint, SIDES, type Side } from "../body";
import { median, rootSumSquare } from "../geometry";
import { type FrontMark, frontMark } from "./front-mark";
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

interface PanelBones {
  readonly legUnits: number;
  /** Unmarked ankles follow from the stand's foot, so a panel is read again with another stand. */
  readonly stand: WalkPanel | undefined;
  readonly seen: Map<string, BoneSeen>;
}

const bonesByPanel = new WeakMap<WalkPanel, PanelBones>();

const standByStudy = new WeakMap<Study, { readonly stand: WalkPanel | undefined }>();

function standOf(study: Study): WalkPanel | undefined {
  const before = standByStudy.get(study);
  if (before !== undefined) return before.stand;
  const stand = study.walk.panels.find(({ pose }) => pose === "stand");
  standByStudy.set(study, { stand });
  return stand;
}

/** A bone of a panel, read once for as long as somebody holds the panel. */
function boneSeen(study: Study, panel: WalkPanel, side: Side, bone: LimbBone): BoneSeen {
  const legUnits = study.leg.kind === "value" ? study.leg.value : 0;
  const stand = standOf(study);
  let bones = bonesByPanel.get(panel);
  if (bones === undefined || bones.legUnits !== legUnits || bones.stand !== stand) {
    bones = { legUnits, stand, seen: new Map() };
    bonesByPanel.set(panel, bones);
  }
  const key = `${side} ${bone}`;
  const known = bones.seen.get(key);
  if (known !== undefined) return known;
  const seen = readBone(study, panel, side, bone);
  bones.seen.set(key, seen);
  return seen;
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

/** How far apart a bone's ends lie in the depth that the side view does not show, from ahead; null unmarked. */
export function boneDepth(study: Study, panel: WalkPanel, side: Side, bone: LimbBone) {
  return boneSeen(study, panel, side, bone).depth;
}

/**
 * A bone of a panel as the side view has it, with its depth where the front view has both ends marked: an arm
 * that reaches aside is only seen shorter. Null where an end is not marked from the side. Leg lengths.
 */
export function boneLength(study: Study, panel: WalkPanel, side: Side, bone: LimbBone) {
  return boneSeen(study, panel, side, bone).length;
}

/** A bone as it is seen from ahead: never longer than it is. Leg lengths; null where an end is not marked. */
export function boneAhead(study: Study, panel: WalkPanel, side: Side, bone: LimbBone) {
  return boneSeen(study, panel, side, bone).ahead;
}

export type TrueLengths = Readonly<Record<LimbBone, TrueLength | null>>;

const known = new WeakMap<Study, TrueLengths>();

/** Lengths that the stand alone tells are the same for as long as somebody holds the stand. */
const knownOfStand = new WeakMap<WalkPanel, { readonly legUnits: number; lengths: TrueLengths }>();

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
  const legUnits = study.leg.kind === "value" ? study.leg.value : 0;
  const [stand, second] = study.walk.panels.filter(({ pose }) => pose === "stand");
  const ofStand = stand === undefined ? undefined : knownOfStand.get(stand);
  if (second === undefined && ofStand?.legUnits === legUnits) return ofStand.lengths;
  const told = Object.fromEntries(
    LIMB_BONES.map((bone) => [bone, onStand(study, bone) ?? overPanels(study, bone)]),
  ) as TrueLengths;
  const byStandAlone = Object.values(told).every((one) => one?.from === "stand");
  if (stand !== undefined && second === undefined && byStandAlone) {
    knownOfStand.set(stand, { legUnits, lengths: told });
  }
  return told;
}

function onStand(study: Study, bone: LimbBone): TrueLength | null {
  const stands = study.walk.panels.filter(({ pose }) => pose === "stand");
  for (const read of [boneLength, boneAhead]) {
    for (const stand of stands) {
      const seen = bothSides(study, stand, bone, read);
      if (seen.length === 0) continue;
      const value = seen.reduce((sum, one) => sum + one.value, 0) / seen.length;
      const plusMinus = rootSumSquare(...seen.map((one) => one.plusMinus)) / seen.length;
      return { value, plusMinus, from: "stand" };
    }
  }
  return null;
}

function overPanels(study: Study, bone: LimbBone): TrueLength | null {
  const seen = study.walk.panels.flatMap((panel) => bothSides(study, panel, bone, boneLength));
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
