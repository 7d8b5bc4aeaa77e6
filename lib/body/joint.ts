/** The walker's own left and right. In the side view his right side is near us. */
export const SIDES = ["left", "right"] as const;
export type Side = (typeof SIDES)[number];

export const LIMB_JOINTS = [
  "shoulder",
  "elbow",
  "wrist",
  "hip",
  "knee",
  "ankle",
  "heel",
  "ball",
  "toe",
] as const;
export type LimbJoint = (typeof LIMB_JOINTS)[number];

export type JointName = "head" | "neck" | "load" | `${Side}-${LimbJoint}`;

/** Every joint a mark may name, from the top down, left before right. */
export const JOINTS: readonly JointName[] = [
  "head",
  "neck",
  "load",
  ...LIMB_JOINTS.flatMap((joint): JointName[] => [`left-${joint}`, `right-${joint}`]),
];
