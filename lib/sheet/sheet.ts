import type { Build, PoseMarks, Side } from "../body";
import type { Ground, OnPurpose, SheetYardstick, Travel, WalkKind } from "../gait";
import type { View } from "../geometry";
import type { Stroke } from "../ink";
import type { Frame, PoseName } from "../motion";

/** Eight random base64url characters. */
export type PanelId = string;
export type StrokeId = string;

/** The sheet's head: what the brief said, and how it is read. */
export interface SheetHead {
  readonly title: string;
  readonly shot: string;
  readonly kind: WalkKind;
  readonly framesPerSecond: number;
  readonly exposure: 1 | 2;
  readonly yardstick: SheetYardstick;
  readonly travel: Travel;
  /** How places on the ground are had; absent where they follow from the travel or are set by hand. */
  readonly ground?: Ground;
  /** Frames from one contact to the next, by the side that starts the step. */
  readonly framesPerStep: { readonly left: number; readonly right: number };
  /** Leg lengths a step. */
  readonly stepLength: number;
  /** Leg lengths a frame; follows from step length and frames per step unless set. */
  readonly advance: number;
  readonly build: Build;
  /** First and last frame of the loop that play runs and the cycle closes on. */
  readonly loop: { readonly from: Frame; readonly to: Frame };
  /** What the character carries, as a share of body mass; absent where that is nothing. */
  readonly load?: number;
  /** The number that the shot gives to frame 1; absent where the shot too counts from 1. */
  readonly firstFrame?: number;
  /** Who or what the walk was taken from; shown and printed where it is not empty. */
  readonly credit: string;
}

export interface InkStroke extends Stroke {
  readonly id: StrokeId;
}

/** A picture's own bytes: the SHA-256 of them, 43 base64url characters. */
export type PictureId = string;

/** Where a picture lies under a view, and how far it is dimmed. */
export interface PicturePlace {
  /** Its upper left corner, panel units, y down. It may reach beyond the paper. */
  readonly x: number;
  readonly y: number;
  /** Panel units. */
  readonly width: number;
  readonly height: number;
  /** The share of it that the paper takes away: 0 shows it as it is, 1 not at all. */
  readonly dim: number;
}

/** A reference picture under one view of a panel. Its bytes are kept beside the sheet, by its id. */
export interface PictureUnder extends PicturePlace {
  readonly picture: PictureId;
}

export interface Panel {
  readonly id: PanelId;
  readonly frame: Frame;
  /** Frames the pose is kept beyond its exposure; 0 as a rule. */
  readonly hold: number;
  readonly pose: PoseName;
  readonly weightOn: Side | null;
  readonly place: number | null;
  readonly marks: PoseMarks;
  /** Views whose ink does not follow the marked figure: it was moved, and nothing was drawn since. */
  readonly toRedraw: Readonly<Record<View, boolean>>;
  /** Ink by view, in drawing order (z, then id). */
  readonly ink: Readonly<Record<View, readonly InkStroke[]>>;
  /** What lies under each view; null: nothing. */
  readonly pictures: Readonly<Record<View, PictureUnder | null>>;
}

/** A sheet as plain values: the same object until something changes. */
export interface Sheet {
  readonly head: SheetHead;
  /** Panels that are on the strip, by frame, then pose, then id. */
  readonly panels: readonly Panel[];
}

/** A sheet as it is handed over, in a file or as an example: with what the team keeps on purpose. */
export interface HandedSheet extends Sheet {
  /** By id; absent where nothing is kept. */
  readonly onPurpose?: readonly OnPurpose[];
}

/** What a walk is started from. Every field has a default (see `lay-out`). */
export interface Brief {
  readonly title: string;
  readonly shot: string;
  readonly kind: WalkKind;
  readonly framesPerSecond: number;
  readonly exposure: 1 | 2;
  readonly framesPerStep: { readonly left: number; readonly right: number };
  readonly stepLength: number;
  readonly travel: Travel;
  readonly leadIn: boolean;
  readonly build: Build;
  /** What the character carries, as a share of body mass; absent where that is nothing. */
  readonly load?: number;
}
