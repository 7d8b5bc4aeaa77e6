import type { JointName, Side } from "../../lib/body";

/** Whose side a joint is on; null for head, neck and load. */
export function sideOfJoint(joint: JointName): Side | null {
  if (joint.startsWith("left-")) return "left";
  return joint.startsWith("right-") ? "right" : null;
}
