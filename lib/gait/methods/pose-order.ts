import { type PoseName, STEP_POSES } from "../../motion";
import type { Method } from "../method";
import type { CommonYardstick } from "../walk";
import { FLOAT_LIMIT } from "./float";

export const POSE_ORDER_SOURCES: Readonly<Record<CommonYardstick, string>> = {
  trade:
    "Williams, The Animator's Survival Kit (2001): contact, down, passing, up, then the mirrored contact",
  life: "317 steps of 72 captured walks by 15 people: down before passing in all; the highest hips at 0.50 of the step (0 to 0.92), before or after the passing at 0.60",
};

/** Poses whose order is asked. In life the highest hips may come before the passing or after it. */
export const ORDERED: Readonly<Record<CommonYardstick, readonly PoseName[]>> = {
  trade: STEP_POSES,
  life: STEP_POSES.filter((pose) => pose !== "up"),
};

/** Panels of a step that may stand out of order. */
export const OUT_OF_ORDER = 0;

/** Ankles nearer than this along the walk are crossing, leg lengths. */
export const CROSSING = 0.05;
/** A foot this much above the other is in the air, leg lengths: one that bore would float. */
export const IN_THE_AIR = FLOAT_LIMIT;
/** Feet this much wider apart than at the contacts about them read as a contact, leg lengths. */
export const WIDER = 0.05;
export const SHAPE_SOURCE =
  "the poses of five captured walks, 22 steps: at passing the ankles are at most 1.7 % of a leg apart; at no other labelled pose but the highest hips less than 62 %, and nowhere more than 0.6 % wider than at the wider of the contacts about it";

/** Labels that may turn out to be a passing. In life the highest hips may come with the passing. */
export const NOT_A_PASSING: Readonly<Record<CommonYardstick, readonly PoseName[]>> = {
  trade: ["contact", "down", "up"],
  life: ["contact", "down"],
};

export const poseOrderMethod: Method = {
  check: "pose-order",
  asks: "Do the poses follow each other as a step does, and is each drawn as it is labelled?",
  measures:
    "Reads the labels along the strip and whose foot bears the weight. Where both feet are marked from the side it also reads how far they are apart, which tells a contact or a passing whatever its label says.",
  formula: [
    "n = panels of a step that stand out of order, or on the other foot",
    "d = | x(left ankle) − x(right ankle) |, by the heels where an ankle is not marked",
    `reads as a passing: d < ${CROSSING} with one foot more than ${IN_THE_AIR} above the other`,
    `reads as a contact: d − d(the wider contact about it) > ${WIDER} with the front toe up`,
    "x = place along the ground, leg lengths",
  ],
  limits: [
    {
      of: "panels out of the order contact, down, passing, up",
      yardsticks: ["trade"],
      level: "may-show",
      fires: "above",
      value: OUT_OF_ORDER,
      unit: "poses",
      source: POSE_ORDER_SOURCES.trade,
      tripRate: null,
    },
    {
      of: "panels out of the order contact, down, passing",
      yardsticks: ["life"],
      level: "may-show",
      fires: "above",
      value: OUT_OF_ORDER,
      unit: "poses",
      source: POSE_ORDER_SOURCES.life,
      tripRate: 0,
    },
    {
      of: "ankles apart, one foot in the air, at a contact, down or up",
      yardsticks: ["trade"],
      level: "may-show",
      fires: "below",
      value: CROSSING,
      unit: "leg",
      source: SHAPE_SOURCE,
      tripRate: null,
    },
    {
      of: "ankles apart, one foot in the air, at a contact or down",
      yardsticks: ["life"],
      level: "may-show",
      fires: "below",
      value: CROSSING,
      unit: "leg",
      source: SHAPE_SOURCE,
      tripRate: null,
    },
    {
      of: "feet wider apart than at the contacts about them, front toe up",
      yardsticks: ["trade", "life"],
      level: "may-show",
      fires: "above",
      value: WIDER,
      unit: "leg",
      source: SHAPE_SOURCE,
      tripRate: null,
    },
  ],
  life: "The down comes before the passing in every captured step. The highest hips come at 0.50 of the step, anywhere from 0 to 0.92, before or after the passing at 0.60. At passing the ankles are at most 1.7 % of a leg apart.",
};
