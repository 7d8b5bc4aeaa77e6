import type { Method } from "../method";
import { YARDSTICKS } from "../walk";

const DEGREE = Math.PI / 180;

/** A knee less bent than this is straight. Radians. */
export const STRAIGHT_WITHIN = 3 * DEGREE;
/** How fast a knee may reach and leave straight, a frame, whatever the step does. Radians a frame. */
export const SNAPS_FROM = 8 * DEGREE;
/** And as a multiple of the median of its own step. */
export const TIMES_MEDIAN = 2.5;

/**
 * A leg this bent at both of two poses is so much shorter than its bones that it comes straight between them
 * only where the poses themselves jump: it is not followed there. Radians; common practice, no source.
 */
export const MAY_STRAIGHTEN = 25 * DEGREE;

export const SNAP_SOURCE =
  "common practice, no source; of 56 knees in 28 steps of six captured walks none does so at their own 120 frames a second, one when they are timed anew on 24";

export const snapMethod: Method = {
  check: "snap",
  asks: "Does a knee snap straight and back on the way between the poses?",
  measures:
    "Bends each knee through the in-betweens, frame by frame, and looks where it comes to be straight: whether it is thrown there and thrown back faster than its step moves it otherwise. The slower of the two ways counts. It is followed to and from each pose that has it straight between two that are bent, and between poses of which one has it bent by less than 25°.",
  formula: [
    "bend = | lean(thigh) − lean(shank) |, at every frame of the in-betweens",
    `straight: a frame whose bend is below ${Math.round(STRAIGHT_WITHIN / DEGREE)}° and least among its neighbours`,
    "speed = the lesser of |bend(f) − bend(f − 1)| and |bend(f + 1) − bend(f)|",
    `limit = the greater of ${Math.round(SNAPS_FROM / DEGREE)}° a frame and ${TIMES_MEDIAN} × the median speed of the step`,
    "± of a bend that is drawn = that of its marks; in between, of b²/8, by which a leg is shorter that is bent by b",
  ],
  limits: [
    {
      of: "speed to and from straight, where 2.5 × the step's median is less",
      yardsticks: YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: SNAPS_FROM,
      unit: "rad/frame",
      source: SNAP_SOURCE,
      tripRate: null,
    },
  ],
  life: "A knee that walks goes through straight slowly, at 2 to 5° a frame of 24 a second; the fastest it bends is when the foot has left the ground.",
};
