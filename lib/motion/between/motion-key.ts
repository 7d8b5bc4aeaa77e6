import type { FrontPoint, JointName, Side, SidePoint } from "../../body";

/** A foot's time in one place on the ground. Frames, counted from 1; they may lie between two. */
export interface Planted {
  /** When it lands. Two poses of which a foot's `from` is the same have it on one footprint. */
  readonly from: number;
  /** When its toe leaves. */
  readonly to: number;
}

/** Joints of the side view in ground space. Leg lengths. */
export type SideFigure = { readonly [J in JointName]?: SidePoint };
/** Joints of the front view in ground space. Leg lengths. */
export type FrontFigure = { readonly [J in JointName]?: FrontPoint };

/** A figure in ground space, as far as it is marked. */
export interface GroundFigure {
  readonly side: SideFigure;
  readonly front: FrontFigure;
}

/** A drawn pose that a motion goes through. */
export interface MotionKey extends GroundFigure {
  /** The frame it comes on with, and the last that it is kept to; the same where it is not held. */
  readonly frame: number;
  readonly until: number;
  /** Which feet stand; null is in the air. */
  readonly planted: Readonly<Record<Side, Planted | null>>;
}
