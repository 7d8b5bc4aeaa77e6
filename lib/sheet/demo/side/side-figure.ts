import { type JointName, type LimbJoint, limbJoint, type Side } from "../../../body";
import type { Point } from "../../../geometry";
import { type Placer, placerAt } from "../hand/placer";
import { sub } from "../hand/vector";
import type { BrindlePose } from "../pose/brindle-pose";
import type { Figure } from "../pose/figure";
import type { Place } from "../pose/space";

/** Brindle as his right side shows him: all points on the page, leg lengths, y up. */
export interface SideFigure {
  readonly pose: BrindlePose;
  joint(name: JointName): Point;
  of(side: Side, joint: LimbJoint): Point;
  /** About the neck, as the chest is turned. */
  readonly chest: Placer;
  /** About the belt. */
  readonly waist: Placer;
  /** About the middle of the hips; upright, for a skirt hangs. */
  readonly hips: Placer;
  readonly head: Placer;
  readonly sack: Placer;
}

const flat = ({ x, y }: Place): Point => ({ x, y });

export function sideOf(figure: Figure): SideFigure {
  const { pose, joints } = figure;
  const joint = (name: JointName) => flat(joints[name]);
  const waist = flat(figure.waist);
  const neck = joint("neck");
  const hips = { x: pose.hips[0], y: pose.hips[1] };
  const head = joint("head");
  const [turned] = pose.drag.sack;
  const tilt = ((turned - 4) * Math.PI) / 180;
  return {
    pose,
    joint,
    of: (side, name) => joint(limbJoint(side, name)),
    chest: placerAt(neck, sub(flat(figure.chest(0, 1, 0)), neck)),
    waist: placerAt(waist, sub(neck, hips)),
    hips: placerAt(hips, { x: 0, y: 1 }),
    head: placerAt(head, sub(flat(figure.head(0, 1, 0)), head)),
    sack: placerAt(joint("load"), { x: -Math.sin(tilt), y: Math.cos(tilt) }),
  };
}
