import type { View } from "../geometry";
import { JOINTS, type JointName } from "./joint";
import type { Mark, ViewMarks } from "./mark";
import { PANEL } from "./panel-space";

/**
 * A joint's partner on the other side; of head, neck and load the joint itself.
 *
 * @example
 * partnerOf("left-knee"); // => "right-knee"
 */
export function partnerOf(joint: JointName): JointName {
  if (joint.startsWith("left-")) return joint.replace("left-", "right-") as JointName;
  if (joint.startsWith("right-")) return joint.replace("right-", "left-") as JointName;
  return joint;
}

/**
 * The pose of the other step: left and right exchanged. From the side the walker keeps his direction,
 * so the marks stay where they are and only change their side; from ahead left and right change
 * places, so they are turned about the paper's middle. A load stays on the shoulder it lies on.
 *
 * Units:   panel units, y down
 */
export function mirroredMarks(marks: ViewMarks, view: View): ViewMarks {
  const mirrored: Partial<Record<JointName, Mark>> = {};
  for (const joint of JOINTS) {
    const mark = marks[joint];
    if (mark === undefined || joint === "load") continue;
    mirrored[partnerOf(joint)] = view === "side" ? mark : { ...mark, x: PANEL.width - mark.x };
  }
  return mirrored;
}
