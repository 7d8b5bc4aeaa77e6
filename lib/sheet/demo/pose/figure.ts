import type { JointName, Side } from "../../../body";
import type { BrindlePose } from "./brindle-pose";
import { ADVANCE } from "./brindle-poses";
import { footOf } from "./foot";
import { at, type Place, plus, type Turn, turn } from "./space";
import { bend } from "./two-bone";

/** Brindle solved for one panel: every joint, and what the drawing needs beside them. */
export interface Figure {
  readonly pose: BrindlePose;
  /** x from the panel's middle. Leg lengths. */
  readonly joints: { readonly [J in JointName]: Place };
  /** Where the belt goes round him. */
  readonly waist: Place;
  /** A point of the chest: ahead, up and to the right of the neck, as the chest is turned. */
  chest(ahead: number, up: number, right: number): Place;
  /** A point of the pelvis, likewise from the middle of the hips. */
  pelvis(ahead: number, up: number, right: number): Place;
  /** A point of the head, likewise from its middle. */
  head(ahead: number, up: number, right: number): Place;
}

/** His build, leg lengths. */
const BONE = {
  thigh: 0.475,
  shank: 0.44,
  upperArm: 0.34,
  forearm: 0.28,
  halfHips: 0.095,
  halfShoulders: 0.19,
  toWaist: 0.25,
  toNeck: 0.35,
} as const;

export function figureOf(pose: BrindlePose): Figure {
  const [x, y, z] = pose.hips;
  const middle = at(x, y, z);
  const pelvis = part(middle, pose.pelvis);
  const { lean = 0 } = pose.chest;
  const low: Turn = { lean: lean * 0.45, roll: pose.spine * 0.6 + (pose.pelvis.roll ?? 0) * 0.4 };
  const waist = plus(middle, turn(at(0, BONE.toWaist, 0), low));
  const neck = plus(waist, turn(at(0, BONE.toNeck, 0), { lean: lean * 1.35, roll: pose.spine }));
  const chest = part(neck, { ...pose.chest, lean: lean * 1.2 });
  const head = plus(
    neck,
    turn(at(0.035, 0.2, 0), { ...pose.head, lean: lean * 0.8 + (pose.head.lean ?? 0) }),
  );
  const trunk = {
    neck,
    head,
    "left-shoulder": chest(0, -0.1, -BONE.halfShoulders),
    "right-shoulder": chest(0, -0.07, BONE.halfShoulders),
    "left-hip": pelvis(0, 0, -BONE.halfHips),
    "right-hip": pelvis(0, 0, BONE.halfHips),
    load: chest(-0.3, -0.2 - pose.drag.sack[1], -0.13),
  };
  const joints = {
    ...trunk,
    ...legOf("left", trunk["left-hip"], pose),
    ...legOf("right", trunk["right-hip"], pose),
    ...freeArm(trunk["right-shoulder"], pose),
    ...holdingArm(trunk["left-shoulder"], chest(0.2, -0.12, -0.12)),
  };
  return {
    pose,
    joints,
    waist,
    chest,
    pelvis,
    head: part(head, { ...pose.head, lean: lean * 0.3 + (pose.head.lean ?? 0) }),
  };
}

function part(origin: Place, turned: Turn): Figure["chest"] {
  return (ahead, up, right) => plus(origin, turn(at(ahead, up, right), turned));
}

type Leg<S extends Side> = {
  readonly [J in "knee" | "ankle" | "heel" | "ball" | "toe" as `${S}-${J}`]: Place;
};

function legOf<S extends Side>(side: S, hip: Place, pose: BrindlePose): Leg<S> {
  const place = pose.place ?? ADVANCE * (pose.frame - 1);
  const foot = footOf(side, pose.feet[side], place);
  const pole = at(1, 0, side === "right" ? 0.3 : -0.3);
  const { joint } = bend(hip, foot.ankle, { first: BONE.thigh, second: BONE.shank, pole });
  const leg = { knee: joint, ...foot };
  return Object.fromEntries(
    Object.entries(leg).map(([name, place]) => [`${side}-${name}`, place]),
  ) as Leg<S>;
}

function freeArm(shoulder: Place, { arm }: BrindlePose) {
  const hang = (degrees: number, out: number) =>
    turn(turn(at(0, -1, 0), { roll: -out }), { lean: -degrees });
  const elbow = plus(shoulder, hang(arm.swing, 9), BONE.upperArm);
  const wrist = plus(elbow, hang(arm.swing + arm.bend, 2), BONE.forearm);
  return { "right-elbow": elbow, "right-wrist": wrist };
}

function holdingArm(shoulder: Place, hand: Place) {
  const pole = at(0.75, -1, -0.6);
  const { joint, end } = bend(shoulder, hand, { first: BONE.upperArm, second: BONE.forearm, pole });
  return { "left-elbow": joint, "left-wrist": end };
}
