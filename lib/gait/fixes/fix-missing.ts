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
import { STEP_POSES, type StepPose } from "../../motion";
import { applyFix } from "../apply-fix";
import { posesAsked } from "../checks/missing-pose";
import type { Remark } from "../finding";
import type { FixChange } from "../fix";
import { placeOf } from "../ground-mark";
import { type PoseGroup, poseGroups } from "../pose-groups";
import { walkingPanels } from "../step";
import { type Study, studyWalk } from "../study";
import type { Walk, WalkPanel } from "../walk";
import { listed } from "../words";
import { overTheFoot } from "./fix-weight";
import { heightOf, hipSpan, inside } from "./hip-span";
import { inBetween } from "./in-between";
import { frameFor } from "./missing-frame";
import { moveBody } from "./move-pose";
import { poseByRule } from "./pose-by-rule";
import type { Proposal } from "./proposal";

type Added = Extract<FixChange, { kind: "add-panel" }>;

/**
 * Missing poses: a panel for each, at the frame where the yardstick has it between the poses about it,
 * its marks in-between theirs, hips in the span that the step's other poses leave, knees solved. Where a
 * passing in-between has its weight beside the foot, the body goes over it; where that is not as in the step
 * it goes by, it is drawn from that.
 */
export function fixMissing(study: Study, remark: Remark): readonly Proposal[] {
  const asIs = allAdded(study, remark, (_, { marks }) => marks);
  const balanced = allAdded(study, remark, (now, panel) =>
    panel.pose === "passing" && panel.weightOn !== null
      ? overTheFoot(now, panel, panel.weightOn)
      : panel.marks,
  );
  const copied = study.pattern === null ? [] : allAdded(study, remark, poseByRule);
  return [asIs, balanced, copied].flatMap((changes) =>
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
    const now = againBy(study, applyFix(study.walk, { changes: added }));
    const group = groupAt(now, side, panels);
    if (group === null) return [];
    if (group.panels.some((panel) => panel.pose === pose)) continue;
    const made = addedPose(now, group, pose, balance);
    if (made === null) return [];
    added.push(made);
  }
  return added;
}

/** The walk as it stands now, held against the same step as before. */
function againBy({ yardstick, pattern }: Study, walk: Walk): Study {
  return { ...studyWalk(walk, yardstick), pattern };
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
  // Marks of a leg that is nearly straight tell by chance to which side it bends.
  const bent = one.straight < other.straight ? one : other;
  const knee = middleJoint(hip, foot, { upper, lower, bend: bent.bend ?? -1 });
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
  const straight = distance(hip, foot) / (upper + lower); // 1 is all the way
  return upper > 0 && lower > 0 ? { upper, lower, straight, bend: bendOf(hip, knee, foot) } : null;
}

/** The hips raised or lowered to where the step's other poses leave room. */
function inSpan(study: Study, added: Omit<WalkPanel, "id">, pose: StepPose): PoseMarks {
  const { kind: _, ...panel } = { kind: "add-panel", ...added };
  const walk = applyFix(study.walk, { changes: [{ kind: "add-panel", ...panel }] });
  const now = againBy(study, walk);
  const step = now.steps.find((one) => one[pose]?.frame === panel.frame);
  const { leg } = study;
  if (step === undefined || leg.kind === "cannot-tell") return panel.marks;
  const height = heightOf(now, step, pose);
  const span = hipSpan(now, step, pose);
  if (height === null || span === null) return panel.marks;
  const up = (inside(height, span) - height) * leg.value;
  return up === 0 ? panel.marks : moveBody(panel, { forward: 0, up, aside: 0 }).marks;
}
