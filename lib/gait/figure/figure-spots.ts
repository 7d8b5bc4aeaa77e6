import { type FigureSize, type JointName, otherSide, type Side } from "../../body";
import { type ArmSwing, type BodySwing, bodySwing } from "../../motion";
import { flatFoot } from "./planted-foot";
import { type Moment, type PosedLeg, type PosedLegs, posedLegs } from "./posed-legs";

/**
 * A joint in the round. Leg lengths: x ahead of where the carrying heel was put down, y up from the
 * ground, z to the walker's right of the line that he walks on.
 */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}
export type FigureSpots = ReadonlyMap<JointName, Spot>;

/** Our own choice: feet point out a little (7°), or from ahead a toe would hide its heel. */
const TOE_OUT = Math.PI / 25;

/** A whole figure in a moment of a step that this side carries. Legs and arms opposed. */
export function walkingSpots(size: FigureSize, side: Side, moment: Moment): FigureSpots {
  const legs = posedLegs(size, moment);
  return spotsOf(size, side, legs, bodySwing(moment.share));
}

/** Upright, straight and still, the feet side by side under the hips. */
const STILL: BodySwing = {
  hip: { ahead: 0, up: 0 },
  shoulder: { ahead: 0, up: 0 },
  shift: 0,
  carrying: { upperArm: 0, elbow: 0, elbowOut: 0, wristOut: 0 },
  other: { upperArm: 0, elbow: 0, elbowOut: 0, wristOut: 0 },
};

export function standingSpots(size: FigureSize): FigureSpots {
  const foot = flatFoot(size.foot);
  const hip = { x: foot.ankle.x, y: foot.ankle.y + size.thigh + size.shank };
  const leg: PosedLeg = { ...foot, hip, knee: { x: hip.x, y: foot.ankle.y + size.shank } };
  return spotsOf(size, "right", { middle: hip, carrying: leg, other: leg }, STILL);
}

function spotsOf(size: FigureSize, side: Side, legs: PosedLegs, body: BodySwing): FigureSpots {
  const toSide = side === "right" ? 1 : -1; // z runs to the walker's right
  const middle = { ...legs.middle, z: toSide * body.shift };
  const neck = { ...middle, y: middle.y + size.neck };
  const spots = new Map<JointName, Spot>([
    ["head", { ...neck, y: neck.y + size.head }],
    ["neck", neck],
  ]);
  for (const one of [side, otherSide(side)]) {
    const carries = one === side;
    const out = one === "right" ? 1 : -1;
    const hipZ = middle.z + out * size.half.hips;
    putLeg(spots, one, carries ? legs.carrying : legs.other, { hipZ, footZ: out * size.half.feet });
    const shoulder = {
      x: middle.x + (carries ? 1 : -1) * body.shoulder.ahead,
      y: middle.y + size.shoulders + (carries ? 1 : -1) * body.shoulder.up,
      z: middle.z + out * size.half.shoulders,
    };
    putArm(spots, size, one, { shoulder, swing: carries ? body.carrying : body.other });
  }
  return spots;
}

function putLeg(
  spots: Map<JointName, Spot>,
  side: Side,
  { hip, knee, ankle, heel, ball, toe }: PosedLeg,
  { hipZ, footZ }: { readonly hipZ: number; readonly footZ: number },
): void {
  // From ahead the knee lies on the line from hip to foot, by its height.
  const down = (hip.y - knee.y) / (hip.y - ankle.y);
  const out = (side === "right" ? 1 : -1) * Math.sin(TOE_OUT);
  spots.set(`${side}-hip`, { ...hip, z: hipZ });
  spots.set(`${side}-knee`, { ...knee, z: hipZ + down * (footZ - hipZ) });
  spots.set(`${side}-ankle`, { ...ankle, z: footZ });
  for (const [part, spot] of [
    ["heel", heel],
    ["ball", ball],
    ["toe", toe],
  ] as const) {
    spots.set(`${side}-${part}`, { ...spot, z: footZ + out * (spot.x - ankle.x) });
  }
}

function putArm(
  spots: Map<JointName, Spot>,
  { upperArm, forearm }: FigureSize,
  side: Side,
  { shoulder, swing }: { readonly shoulder: Spot; readonly swing: ArmSwing },
): void {
  const out = side === "right" ? 1 : -1;
  const lower = swing.upperArm + swing.elbow;
  const elbow = {
    x: shoulder.x + upperArm * Math.sin(swing.upperArm),
    y: shoulder.y - upperArm * Math.cos(swing.upperArm),
    z: shoulder.z + out * swing.elbowOut,
  };
  spots.set(`${side}-shoulder`, shoulder);
  spots.set(`${side}-elbow`, elbow);
  spots.set(`${side}-wrist`, {
    x: elbow.x + forearm * Math.sin(lower),
    y: elbow.y - forearm * Math.cos(lower),
    z: shoulder.z + out * swing.wristOut,
  });
}
