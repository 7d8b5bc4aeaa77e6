import {
  type JointName,
  type LimbJoint,
  limbJoint,
  markOf,
  otherSide,
  type Side,
} from "../../body";
import { rootSumSquare } from "../../geometry";
import { STEP_POSES } from "../../motion";
import { footPoints, lowest } from "../foot";
import { ANGLES_APART, HEIGHTS_APART, LIFTS_APART, type LimbAngle } from "../methods/symmetry";
import type { GroundMark } from "../seen-mark";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { type PairReading, type PosePair, posePairs } from "./symmetry-poses";

export const HEIGHT_PAIRS = posePairs(
  [
    {
      what: "the hips stand over the ground by",
      title: "hips stand unevenly",
      subject: "hips",
      poses: STEP_POSES,
      most: () => HEIGHTS_APART,
      read: hipsOver,
    },
  ],
  "the hips marked at the same pose of both steps",
);

export const CLEARANCE_PAIRS = posePairs(
  [
    {
      what: "the swinging foot is over the ground by",
      title: "feet are lifted unevenly",
      subject: "lift",
      poses: ["passing"],
      most: () => LIFTS_APART,
      read: lifted,
    },
  ],
  "the swinging foot marked in the side view at the passings of both steps",
);

const LIMBS: Readonly<Record<LimbAngle, readonly [LimbJoint, LimbJoint, LimbJoint]>> = {
  knee: ["hip", "knee", "ankle"],
  thigh: ["hip", "knee", "ankle"],
  elbow: ["shoulder", "elbow", "wrist"],
};

export const ANGLE_PAIRS = posePairs(
  (["knee", "thigh", "elbow"] as const).flatMap((limb) => [angle(limb, 0), angle(limb, 1)]),
  "a hip, knee and ankle marked in the side view at the same pose of both steps",
);

/** The angle of a limb of the side that carries, or of the other. */
function angle(limb: LimbAngle, other: 0 | 1): PosePair {
  const whose = other === 0 ? "that carries" : "that swings";
  const verb = limb === "thigh" ? "leans forward by" : "bends by";
  const part =
    limb === "elbow" ? `the elbow on the side ${whose}` : `the ${limb} of the leg ${whose}`;
  return {
    what: `${part} ${verb}`,
    title: `${limb}s ${limb === "thigh" ? "lean" : "bend"} unevenly`,
    subject: limb,
    poses: STEP_POSES,
    most: (pose) => ANGLES_APART[limb][pose],
    read: (study, panel, weightOn) =>
      study.once(panel, limbAngles)[other === 0 ? weightOn : otherSide(weightOn)][limb],
  };
}

function limbAngles(study: Study, panel: WalkPanel) {
  const of = (side: Side): Readonly<Record<LimbAngle, PairReading | null>> => ({
    knee: limbAngle(study, panel, "knee", side),
    thigh: limbAngle(study, panel, "thigh", side),
    elbow: limbAngle(study, panel, "elbow", side),
  });
  return { left: of("left"), right: of("right") };
}

/** The angle of a limb. Where a load is marked an arm holds it, and the elbows are not held against each other. */
function limbAngle(
  study: Study,
  panel: WalkPanel,
  limb: LimbAngle,
  side: Side,
): PairReading | null {
  if (limb === "elbow" && markOf(panel.marks.side, "load") !== null) return null;
  const joints = LIMBS[limb].map((joint): JointName => limbJoint(side, joint));
  const [top, middle, low] = joints.map((joint) => study.seen(panel, joint));
  if (top == null || middle == null || low == null) return null;
  const upper = leanForward(top, middle);
  if (limb === "thigh") {
    const reading = { value: upper.value, plusMinus: upper.plusMinus, unit: "rad" } as const;
    return { reading, view: "side", joints };
  }
  const lower = leanForward(middle, low);
  const bend = limb === "knee" ? upper.value - lower.value : lower.value - upper.value;
  const plusMinus = rootSumSquare(upper.plusMinus, lower.plusMinus);
  const value = Math.atan2(Math.sin(bend), Math.cos(bend));
  return { reading: { value, plusMinus, unit: "rad" }, view: "side", joints };
}

/** How far a bone's lower end stands ahead of its upper end, from hanging straight. Radians. */
function leanForward(upper: GroundMark, lower: GroundMark) {
  const [across, down] = [lower.x - upper.x, upper.y - lower.y];
  const plusMinus = rootSumSquare(upper.plusMinus, lower.plusMinus) / Math.hypot(across, down);
  return { value: Math.atan2(across, down), plusMinus };
}

function hipsOver(study: Study, panel: WalkPanel): PairReading | null {
  const hip = study.hipOf(panel);
  if (hip.kind === "cannot-tell") return null;
  const { value, plusMinus, view, joints } = hip;
  return { reading: { value, plusMinus, unit: "leg" }, view, joints };
}

function lifted(study: Study, panel: WalkPanel, weightOn: Side): PairReading | null {
  const side = otherSide(weightOn);
  const low = lowest(footPoints(panel, side, study.leg));
  if (low === null) return null;
  const reading = { value: low.y, plusMinus: low.plusMinus, unit: "leg" } as const;
  return { reading, view: "side", joints: [limbJoint(side, low.joint)] };
}
