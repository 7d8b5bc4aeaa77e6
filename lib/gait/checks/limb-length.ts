import { limbJoint, SIDES, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare, type View } from "../../geometry";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Finding, Reading, Remark } from "../finding";
import {
  BONE_ENDS,
  LIMB_BONES,
  type LimbBone,
  type PanelBones,
  panelBones,
  type TrueLengths,
  trueLengths,
} from "../limb-bones";
import { FRONT_SOURCE, LENGTH_LIMITS, LENGTH_SOURCE } from "../methods/limb-length";
import { rankRemarks } from "../rank-remarks";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { capital, listed, percent } from "../words";
import { cannotTell, sound } from "./answers";
import { limbPairs } from "./limb-pairs";

const LEGS: readonly LimbBone[] = ["thigh", "shank"];

/** A bone of one panel against the figure's own. */
interface Seen {
  readonly panel: WalkPanel;
  readonly side: Side;
  readonly bone: LimbBone;
  readonly view: View;
  /** By how much it is longer, a share. */
  readonly measured: Reading;
}

/**
 * Do the limbs keep their lengths? Every thigh, shank, upper arm and forearm from the side against the
 * stand's, or the median over the poses; left against right; from ahead only what is longer than it can be.
 *
 * Shapes:  a remark for each limb of a panel, on its bone that differs most; else one answer a side for the legs, and one for arms that
 *          are marked
 * Units:   shares of the bone's own length
 * Errors:  none; legs that are not marked, or marked too vaguely, answer "cannot-tell"
 * Source:  beside each limit, in `methods/limb-length`
 */
export function limbLength(study: Study): readonly Finding[] {
  const { leg } = study;
  const about = { check: "limb-length", side: null, panels: [] } as const;
  if (leg.kind === "cannot-tell") return [cannotTell(about, leg.needs)];
  const judged = study.inPanels(judge, trueLengths(study));
  const remarks = [
    ...gathered(judged, ({ single }) => single),
    ...gathered(judged, (one) => one.pairs),
  ];
  return [...remarks, ...gathered(SIDES, (side) => others(side, judged, remarks))];
}

/** What one panel alone tells of its bones, against the figure's own. */
interface Judged {
  readonly panel: WalkPanel;
  readonly single: readonly Remark[];
  readonly pairs: readonly Remark[];
  readonly legs: Readonly<Record<Side, LegSeen>>;
}

/** What a leg of one panel answers beside its remarks. */
interface LegSeen {
  readonly isRead: boolean;
  /** The side's bones from the side, and those of them whose marks are too vague. */
  readonly vague: readonly Seen[];
  readonly worst: Seen | undefined;
}

function judge(study: Study, panel: WalkPanel, own: TrueLengths): Judged {
  const bones = panelBones(study, panel);
  const seen =
    panel.pose === "stand" ? [] : gathered(SIDES, (side) => bonesSeen(panel, bones, side, own));
  const told = seen.map((one) => remark(study, one, own)).filter((one) => one !== null);
  const pairs = limbPairs(study, panel, bones, told);
  const single = worstOfLimbs(told.filter((one) => !isToldByPair(one, pairs)));
  const legs = {
    left: legSeen(bones, "left", seen),
    right: legSeen(bones, "right", seen),
  };
  return { panel, single, pairs, legs };
}

function legSeen(bones: PanelBones, side: Side, seen: readonly Seen[]): LegSeen {
  const own = seen.filter((one) => one.side === side && one.view === "side");
  const isRead = LEGS.every((bone) => bones[side][bone].length !== null);
  return { isRead, vague: own.filter(isTooVague), worst: worstOf(own) };
}

function worstOf(seen: readonly Seen[]): Seen | undefined {
  return greatestOf(seen, ({ measured }) => Math.abs(measured.value));
}

function bonesSeen(panel: WalkPanel, bones: PanelBones, side: Side, lengths: TrueLengths): Seen[] {
  const seen: Seen[] = [];
  for (const bone of LIMB_BONES) {
    const own = lengths[bone];
    const { length: here, ahead } = bones[side][bone];
    if (own === null) continue;
    if (here !== null) {
      seen.push({ panel, side, bone, view: "side", measured: longerBy(here, own) });
    }
    if (ahead === null) continue;
    const longest = here !== null && here.value > own.value ? here : own;
    seen.push({ panel, side, bone, view: "front", measured: longerBy(ahead, longest) });
  }
  return seen;
}

interface Length {
  readonly value: number;
  readonly plusMinus: number;
}

function longerBy(seen: Length, own: Length): Reading {
  return {
    value: seen.value / own.value - 1,
    plusMinus: rootSumSquare(seen.plusMinus, own.plusMinus) / own.value,
    unit: "share",
  };
}

function remark(study: Study, seenBone: Seen, own: TrueLengths): Remark | null {
  const { panel, side, bone, view, measured } = seenBone;
  const { value, plusMinus } = measured;
  const far = view === "side" ? Math.abs(value) : value;
  const broken = LENGTH_LIMITS[bone].find((limit) => clearlyBeyond(far, plusMinus, limit.value));
  if (broken === undefined) return null;
  const longer = value > 0;
  const than = own[bone]?.from === "stand" ? "on the stand" : "in most poses";
  const seen = { shows: "will", "may-show": "may", tidy: "will hardly" }[broken.level];
  const asked =
    view === "side"
      ? `up to ${percent({ value: broken.value, plusMinus: 0 })} passes as one length`
      : `from ahead a limb is never seen longer than it is, and ${percent({ value: broken.value, plusMinus: 0 })} more passes`;
  return {
    kind: "remark",
    check: "limb-length",
    level: broken.level,
    yardstick: study.yardstick,
    side,
    panels: [panel.id],
    frames: [panel.frame],
    spots: [{ panel: panel.id, view, joints: jointsOf(side, bone) }],
    measured,
    expected: { value: longer ? broken.value : -broken.value, plusMinus: 0, unit: "share" },
    title: capital(`${side} ${bone} is ${longer ? "longer" : "shorter"} here`),
    why: `At frame ${panel.frame} the ${side} ${bone} is ${percent(measured)} ${longer ? "longer" : "shorter"} than ${than}; ${asked}. It ${seen} be seen to ${longer ? "grow" : "shrink"}.`,
    source: view === "side" ? LENGTH_SOURCE : FRONT_SOURCE,
    beyond: (far - broken.value) / broken.value,
  };
}

function jointsOf(side: Side, bone: LimbBone) {
  return BONE_ENDS[bone].map((joint) => limbJoint(side, joint));
}

/** Both bones of a limb, in either view, tell of one knee or elbow that lies elsewhere: the gravest is kept. */
function worstOfLimbs(remarks: readonly Remark[]): readonly Remark[] {
  if (remarks.length < 2) return remarks;
  const worst = new Map<string, Remark>();
  for (const one of rankRemarks(remarks)) {
    const limb = one.spots.some(({ joints }) => joints.some((joint) => /hip|ankle/.test(joint)));
    const key = [one.panels[0], one.side, limb ? "leg" : "arm"].join();
    if (!worst.has(key)) worst.set(key, one);
  }
  const kept = new Set(worst.values());
  return remarks.filter((one) => kept.has(one));
}

/** A detail to tidy that a pair tells of at a graver level is told once. */
function isToldByPair({ level, panels, spots }: Remark, pairs: readonly Remark[]): boolean {
  const [spot] = spots;
  if (level !== "tidy" || spot?.view !== "side") return false;
  return pairs.some(
    (pair) =>
      pair.panels[0] === panels[0] &&
      spot.joints.every((joint) => pair.spots.some(({ joints }) => joints.includes(joint))),
  );
}

/** What a side answers beside its remarks: sound, or what its legs still need. */
function others(side: Side, judged: readonly Judged[], remarks: readonly Remark[]): Finding[] {
  const panels: WalkPanel[] = [];
  const unread: WalkPanel[] = [];
  const vague: Seen[] = [];
  const worsts: Seen[] = [];
  for (const { panel, legs } of judged) {
    if (panel.pose === "stand") continue; // it is its own measure
    const leg = legs[side];
    panels.push(panel);
    if (!leg.isRead) unread.push(panel);
    vague.push(...leg.vague);
    if (leg.worst !== undefined) worsts.push(leg.worst);
  }
  const about = { check: "limb-length", side, panels } as const;
  if (panels.length === 0) return [];
  if (unread.length > 0) {
    const needs = `the ${side} hip, knee and ankle marked in the side view`;
    return [cannotTell({ ...about, panels: unread }, needs)];
  }
  if (vague.length > 0) {
    const bones = listed([...new Set(vague.map(({ bone }) => `${side} ${bone}`))]);
    const exactly = { ...about, panels: vague.map(({ panel }) => panel) };
    return [cannotTell(exactly, `the ends of the ${bones} marked more exactly`)];
  }
  if (remarks.some((one) => one.side === side)) return [];
  return [sound(about, worstOf(worsts)?.measured ?? null)];
}

/** Whether a bone of twice its gravest limit could pass unseen. */
function isTooVague({ bone, measured }: Seen): boolean {
  const gravest = LENGTH_LIMITS[bone][0]?.value ?? 0;
  return !(measured.plusMinus <= gravest);
}
