import { type Exposure, nearestDrawn, nextDrawn } from "./exposure";
import type { Frame } from "./frame";

/** Where a pose belongs in time, and where it stands now: of two equally near frames it takes the nearer to that. */
export interface Moment {
  /** Frames, counted from 1; may lie between two. */
  readonly moment: number;
  readonly now?: Frame;
}

/** Two frames that stay, and what lies between them is drawn on ones or twos. */
export interface Span {
  readonly from: Frame;
  readonly to: Frame;
  readonly exposure: Exposure;
}

/** How many drawn frames a span has between its ends. */
export function roomIn({ from, to, exposure }: Span): number {
  const first = nextDrawn(from, 1, exposure);
  const last = nextDrawn(to, -1, exposure);
  return Math.max(0, 1 + (last - first) / exposure);
}

/**
 * The drawn frames nearest to some moments between two frames that stay, each pose on a frame of its own.
 *
 * Shapes:  moments in order; a frame for each, rising
 * Units:   frames, counted from 1
 * Errors:  RangeError unless the span has room for all, and every moment is finite
 *
 * @example
 * const poses = [{ moment: 4.25 }, { moment: 7.5, now: 7 }, { moment: 10.75 }];
 * spreadFrames(poses, { from: 1, to: 14, exposure: 1 }); // => [4, 7, 11]
 */
export function spreadFrames(moments: readonly Moment[], span: Span): readonly Frame[] {
  const { from, to, exposure } = span;
  if (moments.length > roomIn(span)) {
    throw new RangeError(
      `spreadFrames needs room for ${moments.length} between ${from} and ${to}, got ${roomIn(span)}`,
    );
  }
  const frames = moments.map((moment) => nearestTo(moment, exposure));
  let least = nextDrawn(from, 1, exposure);
  for (const [at, frame] of frames.entries()) {
    frames[at] = Math.max(least, frame);
    least = Math.max(least, frame) + exposure;
  }
  let most = nextDrawn(to, -1, exposure);
  for (let at = frames.length - 1; at >= 0; at -= 1) {
    const frame = Math.min(most, frames[at] ?? most);
    frames[at] = frame;
    most = frame - exposure;
  }
  return frames;
}

function nearestTo({ moment, now }: Moment, exposure: Exposure): Frame {
  const late = nearestDrawn(moment, exposure);
  const early = late - exposure;
  const isTied = Math.abs(moment - early - (late - moment)) < 1e-9;
  if (!isTied || now === undefined) return late;
  return Math.abs(now - early) < Math.abs(now - late) ? early : late;
}
