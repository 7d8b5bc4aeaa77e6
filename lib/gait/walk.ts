import type { Build, PoseMarks, Side } from "../body";
import type { Frame, PoseName } from "../motion";

export const KINDS = [
  "plain",
  "heavy",
  "limp",
  "sneak",
  "child",
  "double-bounce",
  "march",
  "free",
] as const;
export type WalkKind = (typeof KINDS)[number];

/**
 * What readings are held against: how animators pose a walk, how people walk, the walk's own pattern step,
 * or the pattern step of another walk that is handed in.
 */
export const YARDSTICKS = ["trade", "life", "this-walk", "version"] as const;
export type Yardstick = (typeof YARDSTICKS)[number];

/** The yardsticks that hold for any walk. Drawing and timing go by one of them whatever the yardstick. */
export const COMMON_YARDSTICKS = ["trade", "life"] as const satisfies readonly Yardstick[];
export type CommonYardstick = (typeof COMMON_YARDSTICKS)[number];

/** What a walk goes by where its yardstick is a pattern step, which sets no rule for drawing a new pose. */
export function commonOf(yardstick: Yardstick): CommonYardstick {
  return yardstick === "life" ? "life" : "trade";
}

/** The yardsticks that a sheet can be kept by: a version needs its other walk beside it. */
export const SHEET_YARDSTICKS = [
  "trade",
  "life",
  "this-walk",
] as const satisfies readonly Yardstick[];
export type SheetYardstick = (typeof SHEET_YARDSTICKS)[number];

export type Travel = "on-the-spot" | "travelling";

/** How places on the ground are had: from the travel and as set by hand, or solved from the planted feet. */
export type Ground = "by-travel" | "solved";

/** One panel as the gait library sees it: when, which pose, whose weight, and the marks. */
export interface WalkPanel {
  readonly id: string;
  readonly frame: Frame;
  readonly pose: PoseName;
  /** The side that carries, or at contact receives, the weight; null while nobody said. */
  readonly weightOn: Side | null;
  /** Ground x of the panel's middle, leg lengths, set by hand; null follows from the advance. */
  readonly place: number | null;
  readonly marks: PoseMarks;
}

/** A walk to be measured: plain values, panels in frame order; on one frame by pose as a step runs, then id. */
export interface Walk {
  readonly kind: WalkKind;
  readonly framesPerSecond: number;
  /** 1: on ones, every frame is drawn; 2: on twos. */
  readonly exposure: 1 | 2;
  readonly travel: Travel;
  /** Absent: by travel. */
  readonly ground?: Ground;
  /** How far the ground passes under the walker, leg lengths a frame. */
  readonly advance: number;
  readonly build: Build;
  /** What the walker carries, as a share of body mass; absent where that is nothing. */
  readonly load?: number;
  readonly panels: readonly WalkPanel[];
}
