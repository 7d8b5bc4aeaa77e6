import { VIEWS, type View } from "../geometry";
import { PICTURE_FIELD, type PictureTuple } from "./fields";
import type { Panel, PictureUnder } from "./sheet";

export type PanelPictures = Panel["pictures"];

const NONE: PanelPictures = { side: null, front: null };

/** The key that the picture under a view is kept under: `picture.side`. */
export function pictureKey(view: View): string {
  return `picture.${view}`;
}

export function isPictureKey(key: string): boolean {
  return VIEWS.some((view) => pictureKey(view) === key);
}

/** A picture as the document holds it. */
export function pictureTuple({ picture, x, y, width, height, dim }: PictureUnder): PictureTuple {
  return [picture, x, y, width, height, dim];
}

/** A value of the document as a picture; null where there is none, or it makes no sense. */
export function readPicture(value: unknown): PictureUnder | null {
  if (!PICTURE_FIELD.fits(value)) return null;
  const [picture, x, y, width, height, dim] = value;
  return { picture, x, y, width, height, dim };
}

/**
 * What lies under both views of a panel.
 * @param skipped told of each value that is there and makes no sense
 */
export function readPictures(
  map: { get(key: string): unknown },
  skipped: (key: string) => void,
): PanelPictures {
  const read = (view: View): PictureUnder | null => {
    const value = map.get(pictureKey(view));
    const picture = readPicture(value);
    if (picture === null && value !== undefined) skipped(pictureKey(view));
    return picture;
  };
  const side = read("side");
  const front = read("front");
  return side === null && front === null ? NONE : { side, front };
}

/** The pictures there are now, and the very ones there were where they are the same. */
export function keepingPictures(now: PanelPictures, before: PanelPictures): PanelPictures {
  const side = samePicture(now.side, before.side) ? before.side : now.side;
  const front = samePicture(now.front, before.front) ? before.front : now.front;
  return side === before.side && front === before.front ? before : { side, front };
}

function samePicture(one: PictureUnder | null, other: PictureUnder | null): boolean {
  if (one === null || other === null) return one === other;
  const values = pictureTuple(other);
  return pictureTuple(one).every((value, index) => value === values[index]);
}
