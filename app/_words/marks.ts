import type { JointName, LimbJoint } from "../../lib/body";
import type { View } from "../../lib/geometry";
import { common } from "./common";

type Part = LimbJoint | "head" | "neck" | "load";

const part: Readonly<Record<Part, string>> = {
  head: "head",
  neck: "neck",
  load: "load",
  shoulder: "shoulder",
  elbow: "elbow",
  wrist: "wrist",
  hip: "hip",
  knee: "knee",
  ankle: "ankle",
  heel: "heel",
  ball: "ball",
  toe: "toe",
};

/** Joint marks on the papers, and the joints to choose from in the tray. */
export const marks = {
  part,
  /** A joint's id with a space for its hyphen: "left knee". */
  joint: (joint: JointName) => joint.replace("-", " "),
  layer: (view: View) => `Marks, ${common.view[view]} view`,
  mark: (joint: JointName, view: View, across: number, down: number) =>
    `${marks.joint(joint)}, ${common.view[view]} view, ${Math.round(across)} across, ${Math.round(down)} down`,

  guess: (joint: JointName, view: View, across: number, down: number) =>
    `Guess: ${marks.mark(joint, view, across, down)}`,

  heading: (view: View) => `Joints, ${common.view[view]}`,
  noPanel: "Tap a panel to mark its joints.",
  next: (joint: JointName) => `Next: ${marks.joint(joint)}.`,
  inHand: (joint: JointName) => `In hand: ${marks.joint(joint)}.`,
  onTo: (frame: number, view: View) => `On to frame ${frame}, ${common.view[view]}.`,
  quickDone: "Quick set done; more marks refine.",
  allDone: "Every joint of this view is marked.",
  stripDone: (view: View) =>
    `Every panel has its quick set in the ${common.view[view]} view; more marks refine.`,
  place: (joint: JointName) => `Place ${marks.joint(joint)}`,
  placeKey: "Enter",
  placeAll: (left: number) => `All ${left} as guessed`,
  placeAllKey: "A",
  find: (joint: JointName) => `Find ${marks.joint(joint)}`,
  lift: (joint: JointName) => `Lift ${marks.joint(joint)}`,
  dragging: {
    label: "A drag moves",
    joint: "one mark",
    figure: "the figure",
    hint: "the figure: its limbs keep their lengths and the foot that carries stays; Alt swaps the two while dragging",
  },
  onward: {
    label: "Then on to",
    nextPanel: "next panel",
    otherView: (view: View) => (view === "side" ? "its front" : "next side"),
  },
  keys: "Arrows move a mark or its guess, Delete lifts it. M again goes to the guess.",
  choice: (joint: JointName, state: "placed" | "next" | null) =>
    state === null ? marks.joint(joint) : `${marks.joint(joint)}, ${state}`,
  centre: "centre",
} as const;
