import { requireFinite } from "../require";
import type { Frame } from "./frame";

/** On ones every frame is drawn; on twos every second, 1 3 5 …: only those can carry a pose. */
export type Exposure = 1 | 2;

/**
 * The drawn frame nearest to a moment; half-way between two it is the later one.
 *
 * Units:   frames, counted from 1
 * Errors:  RangeError unless the moment is finite
 *
 * @example
 * nearestDrawn(3.6, 1); // => 4
 * nearestDrawn(4, 2); // => 5
 */
export function nearestDrawn(moment: number, exposure: Exposure): Frame {
  requireFinite("nearestDrawn", { moment });
  return 1 + exposure * Math.floor((moment - 1) / exposure + 0.5);
}

/**
 * The first drawn frame after a frame, or the last before it.
 *
 * Units:   frames, counted from 1; the one before 1 is 0 or less
 * Errors:  RangeError unless the frame is finite
 *
 * @example
 * nextDrawn(4, 1, 2); // => 5
 * nextDrawn(5, -1, 2); // => 3
 */
export function nextDrawn(frame: number, way: 1 | -1, exposure: Exposure): Frame {
  requireFinite("nextDrawn", { frame });
  const exposures = (frame - 1) / exposure;
  return 1 + exposure * (way > 0 ? Math.floor(exposures) + 1 : Math.ceil(exposures) - 1);
}
