import type { Frame } from "./frame";

/** A pose on the strip, as far as it is kept in time. */
export interface Kept {
  readonly frame: Frame;
  /** Frames the pose is kept beyond its exposure. */
  readonly hold: number;
}

/**
 * The last frame of a pose that is held: its exposure, and as many frames more as it is kept.
 *
 * Units:   frames, counted from 1
 *
 * @example
 * lastHeld({ frame: 7, hold: 4 }, 1); // => 11
 * lastHeld({ frame: 7, hold: 4 }, 2); // => 12
 */
export function lastHeld({ frame, hold }: Kept, exposure: 1 | 2 | 3): Frame {
  return frame + exposure - 1 + hold;
}

/**
 * The pose that is on at a frame, by the trade's stepped keys: the latest that has begun, unless one before
 * it is still held. A pose that begins under another's hold comes on when that ends.
 *
 * Shapes:  poses in frame order
 * Errors:  none; undefined before the first
 *
 * @example
 * const poses = [{ frame: 1, hold: 0 }, { frame: 4, hold: 5 }, { frame: 7, hold: 0 }];
 * poseOn(poses, 8, 1)?.frame; // => 4
 * poseOn(poses, 10, 1)?.frame; // => 7
 */
export function poseOn<P extends Kept>(
  poses: readonly P[],
  frame: Frame,
  exposure: 1 | 2 | 3,
): P | undefined {
  const begun = poses.filter((pose) => pose.frame <= frame);
  const held = begun.find((pose) => pose.hold > 0 && lastHeld(pose, exposure) >= frame);
  return held ?? begun.at(-1);
}
