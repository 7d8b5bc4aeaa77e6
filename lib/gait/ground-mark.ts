import type { JointName, LegLength } from "../body";
import { type Asked, type GroundPace, placesOf } from "./places/places-of";
import { type GroundMark, seenMark } from "./seen-mark";
import type { WalkPanel } from "./walk";

/**
 * Ground x of a panel's middle, as the walk has its places (see `placesOf`). A panel is
 * known by its id; one that the walk does not have stands as set, or follows from the travel.
 *
 * Units:   leg lengths; not a number when the walk has no usable advance
 */
export function placeOf(panel: Asked, pace: GroundPace): number {
  return placesOf(pace)(panel).x;
}

/** A side-view mark in ground space, or null where it, the leg length or the place is missing. */
export function groundMark(
  panel: WalkPanel,
  joint: JointName,
  pace: GroundPace,
  leg: LegLength,
): GroundMark | null {
  const mark = seenMark(panel, joint, leg);
  const place = placeOf(panel, pace);
  return mark === null || !Number.isFinite(place) ? null : { ...mark, x: place + mark.x };
}
