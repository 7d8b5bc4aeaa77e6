import {
  bendOf,
  hundredth,
  limbJoint,
  markOf,
  middleJoint,
  PANEL,
  type PoseMarks,
  SIDES,
  type Side,
  type ViewMarks,
} from "../../body";
import { distance } from "../../geometry";
import {
  type Frame,
  isStepPose,
  nearestDrawn,
  nextDrawn,
  STEP_POSES,
  type StepPose,
} from "../../motion";
import { applyFix } from "../apply-fix";
import { posesAsked } from "../checks/missing-pose";
import type { Remark } from "../finding";
import type { FixChange } from "../fix";
import { placeOf } from "../ground-mark";
import { type PoseGroup, poseGroups } from "../pose-groups";
import { POSE_SHARES } from "../pose-shares";
import { walkingPanels } from "../step";
import { type Study, studyWalk } from "../study";
import type { CommonYardstick, WalkPanel } from "../walk";
import { listed } from "../words";
import { overTheFoot } from "./fix-weight";
import { heightOf, hipSpan, inside } from "./hip-span";
import { inBetween } from "./in-between";
import { moveBody } from "./move-pose";
import type { Proposal } from "./proposal";

type Added = Extract<FixChange, { kind: "add-panel" }>;

/**
 * Missing poses: a panel for each, at the frame where the yardstick has it between the poses about it,
 * its marks in-between theirs, hips in the span that the step's other poses leave, knees solved. Where a
 * passing in-between has its weight beside the foot, the body goes over it.
 */
export function fixMissing(study: Study, remark: Remark): readonly Proposal[] {
  const asIs = allAdded(study, remark, (_, { marks }) => marks);
  const balanced = allAdded(study, remark, (now, panel) =>
    panel.pose === "passing" && panel.weightOn !== null
      ? overTheFoot(now, panel, panel.weightOn)
      : panel.marks,
  );
  return [asIs, balanced].flatMap((changes) =>
    changes.length === 0 ? [] : [{ title: titleOf(changes), changes }],
  );
}

function titleOf(added: readonly Added[]): string {
  const poses = listed(
    added.map(({ pose, frame }) => `${pose === "up" ? "an" : "a"} ${pose} at frame ${frame}`),
  );
  return `Add ${poses}`;
}

/** How an added pose carries its weight, once its marks are in-between. */
type Balance = (study: Study, panel: WalkPanel) => PoseMarks;

/** A panel for each pose that is missing; none where one of them finds no place. */
function allAdded(study: Study, { side, panels }: Remark, balance: Balance): readonly Added[] {
  const asked = posesAsked(study, side).poses;
  const added: Added[] = [];
  for (const pose of STEP_POSES.filter((one) => asked.includes(one))) {
    const now = studyWalk(applyFix(study.walk, { changes: added }), study.yardstick);
    const group = groupAt(now, side, panels);
    if (group === null) return [];
    if (group.panels.some((panel) => panel.pose === pose)) continue;
    const made = addedPose(now, group, pose, balance);
    if (made === null) return [];
    added.push(made);
  }
  return added;
}

/** The step that a remark is about, as it stands now. */
function groupAt(study: Study, side: Side | null, ids: readonly string[]): PoseGroup | null {
  const named = poseGroups(study.walk.panels).filter(
    (group) => group.side === side && group.panels.some(({ id }) => ids.includes(id)),
  );
  return named[0] ?? null;
}

function addedPose(study: Study, group: PoseGroup, pose: StepPose, balance: Balance): Added | null {
  const { walk, leg } = study;
  const frame = frameFor(study, group, pose);
  if (frame === null) return null;
  const walking = walkingPanels(walk.panels);
  const before = walking.findLast((panel) => panel.frame < frame);
  const after = walking.find((panel) => panel.frame > frame);
  if (before === undefined || after === undefined) return null;
  const share = (frame - before.frame) / (after.frame - before.frame);
  const byHand = before.place !== null || after.place !== null;
  const isSolved = walk.ground === "solved";
  const [from, to] = [placeOf(before, walk), placeOf(after, walk)];
  const between = byHand || isSolved ? from + share * (to - from) : null;
  const about = { frame, pose, weightOn: group.side, place: isSolved ? null : between } as const;
  const legUnits = leg.kind === "value" ? leg.value : PANEL.plainLeg;
  const added = { ...about, place: between };
  const mixed = inBetween({ before, after, added, pace: walk, legUnits });
  const drawn = { id: "added", ...about, marks: withKnees(mixed, before, after) };
  const marks = balance(study, drawn);
  return { kind: "add-panel", ...about, marks: inSpan(study, { ...about, marks }, pose) };
}

/** A panel and where the yardstick has its pose, in steps from the contact of the step in question. */
interface Anchor {
  readonly panel: WalkPanel;
  readonly at: number;
}

/**
 * The frame of a missing pose: where the yardstick has it between the step's contacts, or between the poses
 * about it where a contact is missing, on a drawn frame of its own between those. Null without room.
 */
function frameFor({ walk, common }: Study, group: PoseGroup, pose: StepPose): Frame | null {
  const shares = POSE_SHARES[common];
  const anchors = anchorsOf(walk.panels, group, common);
  const before = anchors.findLast(({ at }) => at < shares[pose]);
  const after = anchors.find(({ at }) => at > shares[pose]);
  if (before === undefined || after === undefined) return null;
  const [from, to] = contactsAbout(walk.panels, group) ?? [before, after];
  const share = (shares[pose] - from.at) / (to.at - from.at);
  const moment = from.panel.frame + share * (to.panel.frame - from.panel.frame);
  const least = nextDrawn(before.panel.frame, 1, walk.exposure);
  const most = nextDrawn(after.panel.frame, -1, walk.exposure);
  if (least > most) return null;
  return Math.min(most, Math.max(least, nearestDrawn(moment, walk.exposure)));
}

/** The contacts between which a step's poses are even: its own, or the one before where it has none. */
function contactsAbout(
  panels: readonly WalkPanel[],
  { panels: [first], contact, end }: PoseGroup,
): readonly [Anchor, Anchor] | null {
  if (first === undefined || end?.pose !== "contact") return null;
  const before = panels.findLast(({ pose, frame }) => pose === "contact" && frame < first.frame);
  if (contact !== null)
    return [
      { panel: contact, at: 0 },
      { panel: end, at: 1 },
    ];
  return before === undefined
    ? null
    : [
        { panel: before, at: -1 },
        { panel: end, at: 1 },
      ];
}

/** The step's panels, the one before and the one after, that stand where the yardstick has their pose. */
function anchorsOf(
  panels: readonly WalkPanel[],
  { panels: own, end }: PoseGroup,
  common: CommonYardstick,
): Anchor[] {
  const walking = walkingPanels(panels);
  const [first] = own;
  const before = first === undefined ? undefined : walking[walking.indexOf(first) - 1];
  const at = ({ pose }: WalkPanel, steps: number): number => {
    // In life the up may stand anywhere in its step, so there it tells nothing of where others are.
    const roams = pose === "up" && common === "life" && steps === 0;
    if (!isStepPose(pose) || roams) return Number.NaN;
    return steps + POSE_SHARES[common][pose];
  };
  const found = [
    ...(before === undefined ? [] : [{ panel: before, at: at(before, -1) }]),
    ...own.map((panel) => ({ panel, at: at(panel, 0) })),
    ...(end === null ? [] : [{ panel: end, at: at(end, 1) }]),
  ];
  return found.filter(({ at: share }) => Number.isFinite(share));
}

/** Knees bent as before, with the mean of the lengths that both neighbours drew. */
function withKnees(marks: PoseMarks, before: WalkPanel, after: WalkPanel): PoseMarks {
  let { side, front } = marks;
  for (const leg of SIDES) {
    const joint = limbJoint(leg, "knee");
    const knee = kneeBetween(side, before.marks.side, after.marks.side, leg);
    const drawn = markOf(side, joint);
    if (knee === null || drawn === null) continue;
    side = { ...side, [joint]: { ...drawn, ...knee } };
    const ahead = markOf(front, joint);
    if (ahead !== null) front = { ...front, [joint]: { ...ahead, y: knee.y } };
  }
  return { side, front };
}

function kneeBetween(marks: ViewMarks, before: ViewMarks, after: ViewMarks, leg: Side) {
  const hip = markOf(marks, limbJoint(leg, "hip"));
  const end = (["ankle", "heel"] as const).find((part) =>
    [marks, before, after].every((one) => markOf(one, limbJoint(leg, part)) !== null),
  );
  const foot = end === undefined ? null : markOf(marks, limbJoint(leg, end));
  if (hip === null || foot === null || end === undefined) return null;
  const legs = [before, after].map((one) => bones(one, leg, end));
  const [one, other] = legs;
  if (one == null || other == null) return null;
  const upper = (one.upper + other.upper) / 2;
  const lower = (one.lower + other.lower) / 2;
  const knee = middleJoint(hip, foot, { upper, lower, bend: one.bend ?? other.bend ?? -1 });
  const share = upper / (upper + lower); // out of reach: straight
  const at = knee ?? { x: hip.x + share * (foot.x - hip.x), y: hip.y + share * (foot.y - hip.y) };
  return { x: hundredth(at.x), y: hundredth(at.y) };
}

function bones(marks: ViewMarks, leg: Side, end: "ankle" | "heel") {
  const hip = markOf(marks, limbJoint(leg, "hip"));
  const knee = markOf(marks, limbJoint(leg, "knee"));
  const foot = markOf(marks, limbJoint(leg, end));
  if (hip === null || knee === null || foot === null) return null;
  const [upper, lower] = [distance(hip, knee), distance(knee, foot)];
  return upper > 0 && lower > 0 ? { upper, lower, bend: bendOf(hip, knee, foot) } : null;
}

/** The hips raised or lowered to where the step's other poses leave room. */
function inSpan(study: Study, added: Omit<WalkPanel, "id">, pose: StepPose): PoseMarks {
  const { kind: _, ...panel } = { kind: "add-panel", ...added };
  const walk = applyFix(study.walk, { changes: [{ kind: "add-panel", ...panel }] });
  const now = studyWalk(walk, study.yardstick);
  const step = now.steps.find((one) => one[pose]?.frame === panel.frame);
  const { leg } = study;
  if (step === undefined || leg.kind === "cannot-tell") return panel.marks;
  const height = heightOf(now, step, pose);
  const span = hipSpan(now, step, pose);
  if (height === null || span === null) return panel.marks;
  const up = (inside(height, span) - height) * leg.value;
  return up === 0 ? panel.marks : moveBody(panel, { forward: 0, up, aside: 0 }).marks;
}
