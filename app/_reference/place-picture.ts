import { PANEL } from "../../lib/body";
import { midpoint, type Point } from "../../lib/geometry";
import { PICTURE_SIZE, type PicturePlace } from "../../lib/sheet";

type Frame = Pick<PicturePlace, "x" | "y" | "width" | "height">;

/** How much of a picture may be off the paper before it is held back, panel units: our own choice. */
const LEAST_SEEN = 36;

/**
 * As large as fits into a view, in its middle.
 *
 * Units:   any for the size, only its proportions count → panel units
 */
export function fitPicture({ width, height }: Pick<Frame, "width" | "height">): Frame {
  const scale = Math.min(PANEL.width / width, PANEL.height / height);
  const least = PICTURE_SIZE.least; // a very long and thin one is made a little thicker
  const fitted = {
    width: Math.max(least, width * scale),
    height: Math.max(least, height * scale),
  };
  return {
    x: (PANEL.width - fitted.width) / 2,
    y: (PANEL.height - fitted.height) / 2,
    ...fitted,
  };
}

/** Moved by so many panel units; some of it stays on the paper. */
export function movePlace<P extends Frame>(place: P, by: Point): P {
  const held = (at: number, size: number, whole: number) =>
    Math.min(whole - LEAST_SEEN, Math.max(LEAST_SEEN - size, at));
  return {
    ...place,
    x: held(place.x + by.x, place.width, PANEL.width),
    y: held(place.y + by.y, place.height, PANEL.height),
  };
}

/** Made larger or smaller by a factor around a point that stays where it is; never lost to sight. */
export function scalePlace<P extends Frame>(place: P, factor: number, about: Point): P {
  const { least, most } = PICTURE_SIZE;
  const smallest = least / Math.min(place.width, place.height);
  const largest = most / Math.max(place.width, place.height);
  const by = Math.min(largest, Math.max(smallest, factor));
  const scaled = {
    ...place,
    x: about.x + (place.x - about.x) * by,
    y: about.y + (place.y - about.y) * by,
    width: place.width * by,
    height: place.height * by,
  };
  return movePlace(scaled, { x: 0, y: 0 });
}

export function middleOf({ x, y, width, height }: Frame): Point {
  return { x: x + width / 2, y: y + height / 2 };
}

/**
 * Carried by what holds it: one point moves it; two points move and scale it, so that what was under
 * each stays there.
 *
 * Units:   panel units, where the points were and where they are
 */
export function carryPlace<P extends Frame>(
  place: P,
  from: readonly Point[],
  to: readonly Point[],
): P {
  const [one, two] = from;
  const [oneNow, twoNow] = to;
  if (one === undefined || oneNow === undefined) return place;
  if (two === undefined || twoNow === undefined) return movePlace(place, between(one, oneNow));
  const apart = (a: Point, b: Point) => Math.max(1, Math.hypot(a.x - b.x, a.y - b.y));
  const middle = midpoint(one, two);
  const scaled = scalePlace(place, apart(oneNow, twoNow) / apart(one, two), middle);
  return movePlace(scaled, between(middle, midpoint(oneNow, twoNow)));
}

/** Pulled at its corner: larger or smaller around its middle, by how far the corner is from it. */
export function pullPlace<P extends Frame>(place: P, from: Point, to: Point): P {
  const middle = middleOf(place);
  const away = (point: Point) => Math.max(1, Math.hypot(point.x - middle.x, point.y - middle.y));
  return scalePlace(place, away(to) / away(from), middle);
}

function between(from: Point, to: Point): Point {
  return { x: to.x - from.x, y: to.y - from.y };
}
