import type { LimbJoint, Side } from "./joint";

/** The other side of the walker. */
export function otherSide(side: Side): Side {
  return side === "left" ? "right" : "left";
}

/** The name of a limb's joint on one side: `limbJoint("left", "knee")` is `left-knee`. */
export function limbJoint<Joint extends LimbJoint>(side: Side, joint: Joint): `${Side}-${Joint}` {
  return `${side}-${joint}`;
}
