import type { StepPose } from "../../motion";
import type { Level } from "../finding";
import type { Method } from "../method";
import type { CommonYardstick } from "../walk";

/** How surely a viewer will see that a step lacks a pose. */
export const LEVEL_WITHOUT: Readonly<Record<StepPose, Level>> = {
  contact: "shows",
  down: "may-show",
  passing: "shows",
  up: "may-show",
};

/** Poses that a step is asked for. In life the highest hips come with the passing, or before it. */
export const ASKED: Readonly<Record<CommonYardstick, readonly StepPose[]>> = {
  trade: ["contact", "down", "passing", "up"],
  life: ["contact", "down", "passing"],
};

export const MISSING_POSE_SOURCES: Readonly<Record<CommonYardstick, string>> = {
  trade:
    "Williams, The Animator's Survival Kit (2001): the four poses of a step are contact, down, passing and up",
  life: "317 steps of 72 captured walks by 15 people: each has its contact, its lowest hips and its passing; the highest hips come before or with the passing in 82 %",
};

export const missingPoseMethod: Method = {
  check: "missing-pose",
  asks: "Has every step the poses that carry it?",
  measures:
    "Reads the labels of the panels and whose foot bears the weight, and asks only about a step that has ended: what is still to come is not missing.",
  formula: [
    "n = poses drawn of those that a step is asked for",
    "by the trade: contact, down, passing, up; by life: contact, down, passing",
  ],
  limits: [
    {
      of: "poses of a step that lacks its contact or its passing",
      yardsticks: ["trade"],
      level: "shows",
      fires: "below",
      value: ASKED.trade.length,
      unit: "poses",
      source: MISSING_POSE_SOURCES.trade,
      tripRate: null,
    },
    {
      of: "poses of a step that lacks only its down or its up",
      yardsticks: ["trade"],
      level: "may-show",
      fires: "below",
      value: ASKED.trade.length,
      unit: "poses",
      source: MISSING_POSE_SOURCES.trade,
      tripRate: null,
    },
    {
      of: "poses of a step that lacks its contact or its passing",
      yardsticks: ["life"],
      level: "shows",
      fires: "below",
      value: ASKED.life.length,
      unit: "poses",
      source: MISSING_POSE_SOURCES.life,
      tripRate: null,
    },
    {
      of: "poses of a step that lacks only its down",
      yardsticks: ["life"],
      level: "may-show",
      fires: "below",
      value: ASKED.life.length,
      unit: "poses",
      source: MISSING_POSE_SOURCES.life,
      tripRate: null,
    },
  ],
  life: "Every captured step goes through its contact, its lowest hips and its passing. The highest hips come before or with the passing in 82 % of them, so life asks for no up.",
};
