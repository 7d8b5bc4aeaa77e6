import { type JointName, type LimbJoint, limbJoint, type Side } from "../../../body";
import type { Point } from "../../../geometry";
import { type Placer, placerAt } from "../hand/placer";
import type { BrindlePose } from "../pose/brindle-pose";
import type { Figure } from "../pose/figure";
import type { Place } from "../pose/space";

/** Brindle as he comes toward us; his left is on the page's right. Leg lengths, y up. */
export interface FrontFigure {
  readonly pose: BrindlePose;
  joint(name: JointName): Point;
  of(side: Side, joint: LimbJoint): Point;
  /** How far ahead of the hips a joint is: what lies nearer to us hides what is behind. */
  ahead(name: JointName): number;
  /** About the neck, the middle of the hips, the middle of the head: to the page's right, up, out toward us. */
  readonly chest: Placer;
  readonly hips: Placer;
  readonly head: Placer;
  /** About the belt, tipped as the hips are. */
  readonly waist: Placer;
  readonly sack: Placer;
}

const facing = ({ y, z }: Place): Point => ({ x: -z, y });

export function frontOf(figure: Figure): FrontFigure {
  const { pose, joints } = figure;
  const joint = (name: JointName) => facing(joints[name]);
  const deep =
    (part: Figure["chest"]): Placer =>
    (aside, up, ahead = 0) =>
      facing(part(ahead, up, -aside));
  const waist = facing(figure.waist);
  const list = -((pose.pelvis.roll ?? 0) * Math.PI * 0.8) / 180; // the belt lies on the hips
  return {
    pose,
    joint,
    of: (side, name) => joint(limbJoint(side, name)),
    ahead: (name) => joints[name].x - pose.hips[0],
    chest: deep(figure.chest),
    hips: deep(figure.pelvis),
    head: deep(figure.head),
    waist: placerAt(waist, { x: -Math.sin(list), y: Math.cos(list) }),
    sack: placerAt(joint("load"), { x: 0.1, y: 1 }),
  };
}
