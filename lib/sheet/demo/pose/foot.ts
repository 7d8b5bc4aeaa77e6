import type { Side } from "../../../body";
import type { FootPose } from "./brindle-pose";
import { at, type Place, plus, turn } from "./space";

/** Joints of a foot, in ground space but x from the panel's middle. */
export interface Foot {
  readonly ankle: Place;
  readonly heel: Place;
  readonly ball: Place;
  readonly toe: Place;
}

/** Brindle's boots, leg lengths: how high the ankle is, and what lies how far behind or ahead of it. */
const BOOT = { ankle: 0.085, heel: -0.085, ball: 0.15, toe: 0.25 } as const;
const TURNED_OUT = 11; // degrees
const ASIDE = 0.08; // leg lengths from the line he walks on to the middle of a boot

/** Where a foot's joints are. `place` is the ground x of the panel's middle. */
export function footOf(side: Side, pose: FootPose, place: number): Foot {
  const sign = side === "right" ? 1 : -1;
  // A foot turned out by so much is so much shorter from the side; y up, x ahead, then yawed outward.
  const from = (x: number, y: number, pitch: number): Place =>
    turn(turn(at(x, y, 0), { lean: -pitch }), { yaw: sign * TURNED_OUT });
  const { pitch } = pose;
  const heelToBall = from(BOOT.ball - BOOT.heel, 0, 0);
  const heelToAnkle = from(-BOOT.heel, BOOT.ankle, pitch);
  const flatHeel = (heel: number) => at(heel - place, 0, sign * ASIDE - sign * 0.012);
  let heel: Place;
  let toeWay = from(BOOT.toe - BOOT.ball, 0, pitch);
  if (pose.on === "air") {
    heel = plus(at(pose.ankle[0], pose.ankle[1], sign * ASIDE), heelToAnkle, -1);
    toeWay = from(BOOT.toe - BOOT.ball, 0, pitch + 10);
  } else if (pose.on === "ball") {
    const ball = plus(flatHeel(pose.heel), heelToBall);
    heel = plus(ball, from(BOOT.heel - BOOT.ball, 0, pitch));
    toeWay = from(BOOT.toe - BOOT.ball, 0, 0);
  } else heel = flatHeel(pose.heel);
  const ball = plus(heel, from(BOOT.ball - BOOT.heel, 0, pitch));
  return { heel, ankle: plus(heel, heelToAnkle), ball, toe: plus(ball, toeWay) };
}
