import type { JointName, Side } from "../body";
import type { View } from "../geometry";
import type { Frame } from "../motion";
import type { Yardstick } from "./walk";

export type Level = "shows" | "may-show" | "tidy";

/**
 * Units a reading may come in. `leg` is a leg length, `share` a fraction of 1, `rad` a radian,
 * `poses` a count of panels, `times` any other count, `number` a ratio that is no part of a whole.
 */
export const UNITS = [
  "leg",
  "frames",
  "share",
  "leg/frame",
  "rad",
  "poses",
  "rad/frame",
  "times",
  "number",
  "leg/s",
  "m/s",
  "steps/min",
  "seconds",
  "m/(step/min)",
] as const;
export type Unit = (typeof UNITS)[number];

export interface Reading {
  readonly value: number;
  /** ± of the value, in the same unit; 0 where it is exact. */
  readonly plusMinus: number;
  readonly unit: Unit;
}

/** Ids of the checks, as they are run. */
export const CHECK_IDS = [
  "missing-pose",
  "pose-order",
  "hip-order",
  "hip-range",
  "weight-side",
  "weight-front",
  "slide",
  "float",
  "sink",
  "foot-roll",
  "clearance",
  "limb-length",
  "reach",
  "knee",
  "snap",
  "gaps",
  "symmetry",
  "loop",
  "hitch",
  "opposition",
  "tempo",
  "width",
  "views",
  "sides",
  "lead-in",
] as const;
export type CheckId = (typeof CHECK_IDS)[number];

/** What a check reads, where it reads several things in one unit. */
export const SUBJECTS = [
  "shoulders",
  "hips",
  "lift",
  "knee",
  "thigh",
  "elbow",
  "landing",
  "standing",
  "leaving",
  "length",
  "flight",
] as const;
export type Subject = (typeof SUBJECTS)[number];

/** Where on the drawing a remark points. */
export interface Spot {
  readonly panel: string;
  readonly view: View;
  readonly joints: readonly JointName[];
}

/** A reading outside what its yardstick expects. */
export interface Remark {
  readonly kind: "remark";
  readonly check: CheckId;
  readonly level: Level;
  readonly yardstick: Yardstick;
  /** Absent where the unit of `measured` tells by itself what the check has read. */
  readonly subject?: Subject;
  readonly side: Side | null;
  /** Panels it speaks of, in frame order. The last is where the viewer sees it. */
  readonly panels: readonly string[];
  readonly frames: readonly Frame[];
  readonly spots: readonly Spot[];
  readonly measured: Reading;
  readonly expected: Reading;
  /** A few words for a heading: "Right foot slips". */
  readonly title: string;
  /** One or two sentences: what will be seen, with both numbers, units and uncertainty. */
  readonly why: string;
  /** Where the threshold comes from. */
  readonly source: string;
  /** How far beyond its threshold, as a multiple of it: what ranking goes by. */
  readonly beyond: number;
}

/** The check could not be answered; `needs` says what is missing, as a phrase after "needs". */
export interface CannotTell {
  readonly kind: "cannot-tell";
  readonly check: CheckId;
  readonly side: Side | null;
  readonly panels: readonly string[];
  readonly needs: string;
}

/** The check was answered and has nothing to say. */
export interface Sound {
  readonly kind: "sound";
  readonly check: CheckId;
  readonly side: Side | null;
  readonly panels: readonly string[];
  readonly measured: Reading | null;
}

export type Finding = Remark | CannotTell | Sound;
