import { LIMB_JOINTS, type LimbJoint, SIDES, type Side } from "./joint";

/** The other side of the walker. */
export function otherSide(side: Side): Side {
  return side === "left" ? "right" : "left";
}

/** The name of a limb's joint on one side: `limbJoint("left", "knee")` is `left-knee`. */
export function limbJoint<Joint extends LimbJoint>(side: Side, joint: Joint): `${Side}-${Joint}` {
  return NAMES[side][joint] as `${Side}-${Joint}`;
}

/** Put together once: names are asked for in the innermost loops, and a new string is slow to look up by. */
const NAMES = Object.fromEntries(
  SIDES.map((side) => [
    side,
    Object.fromEntries(LIMB_JOINTS.map((one) => [one, `${side}-${one}`])),
  ]),
) as Readonly<Record<Side, Readonly<Record<LimbJoint, `${Side}-${LimbJoint}`>>>>;
