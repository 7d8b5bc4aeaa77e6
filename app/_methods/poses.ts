import type { PoseMarks, Side } from "../../lib/body";
import { placedFigure, type Walk, type WalkPanel } from "../../lib/gait";
import type { PoseName } from "../../lib/motion";

/** The poses that the pictures are made of: a figure such as the board places, the right foot carrying. */
const SHOWN = ["stand", "lead-in", "contact", "down", "passing", "up"] as const;
export type ShownPose = (typeof SHOWN)[number];

const FRAMES: Readonly<Record<ShownPose, number>> = {
  stand: 1,
  "lead-in": 7,
  contact: 13,
  down: 16,
  passing: 19,
  up: 22,
};

const bare = (pose: PoseName, frame: number, weightOn: Side | null): WalkPanel => ({
  id: pose,
  frame,
  pose,
  weightOn,
  place: null,
  marks: { side: {}, front: {} },
});

const WALK: Walk = {
  kind: "plain",
  framesPerSecond: 24,
  exposure: 1,
  travel: "on-the-spot",
  advance: 0.75 / 12,
  build: { headsTall: 7, legShare: 0.52, statureMetres: null },
  panels: [
    ...SHOWN.map((pose) => bare(pose, FRAMES[pose], pose === "lead-in" ? "left" : "right")),
    { ...bare("contact", 25, "left"), id: "next" },
  ],
};

function placed(pose: ShownPose): PoseMarks {
  const figure = placedFigure(WALK, pose, "trade");
  return figure.kind === "figure" ? figure.marks : { side: {}, front: {} };
}

export const POSES: Readonly<Record<ShownPose, PoseMarks>> = {
  stand: placed("stand"),
  "lead-in": placed("lead-in"),
  contact: placed("contact"),
  down: placed("down"),
  passing: placed("passing"),
  up: placed("up"),
};
