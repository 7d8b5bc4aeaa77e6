import { type JointName, limbJoint, SIDES, type Side } from "../../body";
import { gathered } from "../../gathered";
import { rootSumSquare } from "../../geometry";
import { clearlyBeyond } from "../beyond";
import type { Reading, Remark } from "../finding";
import { BONE_ENDS, LIMB_BONES, type LimbBone, type PanelBones, trueLengths } from "../limb-bones";
import { PAIR_LIMIT, PAIR_SOURCE } from "../methods/limb-length";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { percent } from "../words";

/**
 * Left against right of a bone in one panel, from the side. Silent where one of the two is already told
 * to be too long or too short there, unless only as a detail to tidy.
 */
export function limbPairs(
  study: Study,
  panel: WalkPanel,
  bones: PanelBones,
  told: readonly Remark[],
): Remark[] {
  const graver = told.filter(({ level }) => level !== "tidy");
  return gathered(LIMB_BONES, (bone) => {
    const pair = pairOf(study, panel, bones, bone);
    if (pair.length === 0) return pair;
    const joints: readonly JointName[] = gathered(SIDES, (side) => jointsOf(side, bone));
    const known = graver.some(({ spots }) =>
      spots[0]?.joints.every((joint) => joints.includes(joint)),
    );
    return known ? [] : pair;
  });
}

function pairOf(study: Study, panel: WalkPanel, bones: PanelBones, bone: LimbBone): Remark[] {
  const [left, right] = [bones.left[bone].length, bones.right[bone].length];
  if (left === null || right === null) return [];
  const mean = (left.value + right.value) / 2;
  const measured: Reading = {
    value: Math.abs(left.value - right.value) / mean,
    plusMinus: rootSumSquare(left.plusMinus, right.plusMinus) / mean,
    unit: "share",
  };
  const limit = PAIR_LIMIT;
  if (!clearlyBeyond(measured.value, measured.plusMinus, limit)) return [];
  const own = trueLengths(study)[bone]?.value ?? mean;
  const away = (value: number) => Math.abs(value - own);
  const side: Side = away(left.value) > away(right.value) ? "left" : "right";
  const longer: Side = left.value > right.value ? "left" : "right";
  return [
    {
      kind: "remark",
      check: "limb-length",
      level: "may-show",
      yardstick: study.yardstick,
      side,
      panels: [panel.id],
      frames: [panel.frame],
      spots: SIDES.map((one) => ({ panel: panel.id, view: "side", joints: jointsOf(one, bone) })),
      measured,
      expected: { value: limit, plusMinus: 0, unit: "share" },
      title: `The two ${bone}s differ`,
      why: `At frame ${panel.frame} the ${longer} ${bone} is ${percent(measured)} longer than the other; up to ${percent({ value: limit, plusMinus: 0 })} passes as a pair. The figure may be seen to have limbs of two sizes.`,
      source: PAIR_SOURCE,
      beyond: (measured.value - limit) / limit,
    },
  ];
}

function jointsOf(side: Side, bone: LimbBone) {
  return BONE_ENDS[bone].map((joint) => limbJoint(side, joint));
}
