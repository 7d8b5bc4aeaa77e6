import type { CheckId } from "../../lib/gait";

/** The drawn examples of the page that says how readings are made: in words, and the words in them. */
export const methodPictures = {
  told: {
    "missing-pose":
      "Four panels over the ruler, labelled contact, down, passing and up; the third is empty.",
    "pose-order":
      "Four panels over the ruler: contact, passing, down, up. The second and third have changed places.",
    "hip-order":
      "The height of the hips over one step: low at the down, over the contact at passing, highest at the up. The step from contact to down is measured.",
    "hip-range":
      "The height of the hips over two steps, a wave. The distance from its lowest to its highest point is measured.",
    "weight-side":
      "A figure from the side as the feet pass. A line drops from the hips to the ground, and the distance from the standing ankle to it is measured; it lies between heel and toe.",
    "weight-front":
      "A figure from the front, standing on one foot. A line drops from the middle of the hips, and the distance to the standing ankle is measured.",
    slide:
      "A planted foot in two panels, one laid over the other; the way its ball has moved along the ground is measured.",
    float: "A foot that bears weight, and the gap between its lowest mark and the ground.",
    sink: "A foot whose toe lies under the ground line, and how far.",
    "foot-roll":
      "One foot three times: landing on its heel with the toe up, flat, and peeling off with its heel up. The height of the toe and of the heel are measured.",
    clearance:
      "A figure from the side as the feet pass; the height of the swinging toe over the ground is measured.",
    "limb-length":
      "The leg of the stand beside the leg of a pose. The shank of the pose is measured against that of the stand.",
    reach:
      "A leg whose hip and ankle are farther apart than thigh and shank are long; the line from hip to ankle is measured.",
    knee: "A leg whose knee bends backward, and the angle by which it does.",
    snap: "The bend of a knee over the frames of a step: for one frame it falls to nothing and springs back.",
    gaps: "Frames on the ruler with the poses of a step. The gap from down to passing is five frames where the even step has three.",
    symmetry:
      "Footprints seen from the side, a left and a right step of different length; both are measured.",
    loop: "The last pose of a stride laid over the first; at the wrist they are farthest apart, and that gap is measured.",
    hitch:
      "The path of the hips between the poses. Where it has one more bump than a walk, a point is set.",
    opposition:
      "A figure from the side at contact: the arm ahead is on the side of the foot ahead, and both are set off.",
    tempo:
      "Two footprints and the step between them, measured; under it the way that the ground slides back in one step, which is shorter.",
    width:
      "Footprints from above; the distance across the walk between left and right is measured.",
    views:
      "The same pose from the side and from the front. A line carries the height of the hips across, and the gap to the other view's hips is measured.",
    sides:
      "Two panels of the legs, one after the other; in the second the left and right marks have changed places.",
    "lead-in":
      "A figure that steps off. A line drops from its hips, and how far they have come over the foot that stays is measured.",
  } satisfies Record<CheckId, string>,
  missing: "no passing",
  tooEarly: "passing",
  rise: "down under contact",
  range: "hip range",
  ahead: "ahead of the ankle",
  beside: "beside the ankle",
  slip: "slip of the ball",
  gap: "above the ground",
  depth: "under the ground",
  toeUp: "toe up",
  flat: "flat",
  heelUp: "heel up",
  clearance: "clearance",
  shank: "shank",
  theStand: "stand",
  thePose: "pose",
  hipToAnkle: "hip to ankle",
  wrongWay: "wrong way",
  bend: "knee bend",
  snaps: "snaps",
  frames: "5 frames",
  even: "even: 3",
  leftStep: "left step",
  rightStep: "right step",
  worst: "farthest apart",
  bump: "one bump too many",
  sameSide: "same side ahead",
  step: "step length",
  advance: "ground slides back",
  width: "step width",
  heights: "heights differ",
  swapped: "changed places",
  shift: "shift over the foot",
  time: "frames",
} as const;
