import type { Method } from "../method";
import { type WalkKind, YARDSTICKS } from "../walk";

/** A rise, a fall or a way that counts as one, beyond the ± of the heights: what a placed figure is exact to. Leg lengths. */
export const COUNTS_FROM = 0.005;
/** A step has one low, a double bounce two. */
export const LOWS = { once: 1, twice: 2 } as const;

/** How often the hips are to sink in a step of this kind of walk. */
export function lowsAsked(kind: WalkKind): number {
  return kind === "double-bounce" ? LOWS.twice : LOWS.once;
}
/** How far the hips may go back between two poses. Leg lengths: as `COUNTS_FROM`. */
export const BACKWARD = 0.005;

/** How far an arc may turn from drawing to drawing where it goes fast. Radians (60°). */
export const ARC_TURN = Math.PI / 3;
/** Fast is a spacing of more than so many times the arc's median. */
export const FAST = 3;

export const ARC_SOURCE =
  "the board's own rule; 31 steps of seven captured walks, from four poses each: where an arc turns by more than 60° at a pose its way there is at most 1.6 times the median, so none trips it";
export const HITCH_SOURCE =
  "28 steps of six captured walks, from four poses each: every one has one low and one high, and none goes back";
export const BOUNCE_SOURCE =
  "common practice, no source: a double bounce goes by that name because it sinks twice a step";

export const hitchMethod: Method = {
  check: "hitch",
  asks: "Do the hips sink and rise once a step and always go forward, and do head and wrists go smoothly?",
  measures:
    "Reads the hips in every pose. The in-betweens rise and fall only between the poses and never beyond them, so their lows and highs are those of the poses; they are counted from one contact to the next: once in any walk, twice in a double bounce, which is also told where it sinks but once. The arcs of head and wrists are followed along the in-betweens, from drawing to drawing as they are seen on the spot: with what the hips travel evenly taken off. A turn counts only at a pose whose marks turn as far and go as fast themselves, counted from the hips: a pose that is good but comes late breaks no arc, and is told by its gaps.",
  formula: [
    `a low = a pose whose hips stand lower than those before and after it by more than ${COUNTS_FROM} + ±`,
    "lows = how many of them lie from the contact up to the next",
    "travel = x(hips) − x(hips, pose before), over the ground",
    "± = root-sum-square of the two poses' hips",
    "turn = angle between an arc's way into a pose and its way out of it, from drawing to drawing, asked where",
    `the wider of the two spacings is more than ${FAST} + ± times the arc's median from pose to pose, both a frame`,
    "±(turn) = root-sum-square of mark / spacing for both spacings and both their ends",
  ],
  limits: [
    {
      of: "lows of the hips in a step",
      yardsticks: YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: LOWS.once,
      unit: "times",
      source: HITCH_SOURCE,
      tripRate: 0,
    },
    ...(["above", "below"] as const).map((fires) => ({
      of: "lows of the hips in a step of a double bounce",
      yardsticks: YARDSTICKS,
      level: "may-show" as const,
      fires,
      value: LOWS.twice,
      unit: "times" as const,
      source: BOUNCE_SOURCE,
      tripRate: null,
    })),
    {
      of: "hips going back from one pose to the next",
      yardsticks: YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: BACKWARD,
      unit: "leg",
      source: HITCH_SOURCE,
      tripRate: 0,
    },
    {
      of: "turn of the head's or a wrist's arc at a pose, where it goes fast",
      yardsticks: YARDSTICKS,
      level: "may-show",
      fires: "above",
      value: ARC_TURN,
      unit: "rad",
      source: ARC_SOURCE,
      tripRate: 0,
    },
  ],
  life: "People sink once a step, just after the contact, rise to the middle of it, and go forward all the time.",
};
