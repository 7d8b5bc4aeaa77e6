import { JOINTS, type JointName, type Mark, type PoseMarks, type ViewMarks } from "../body";
import { VIEWS, type View } from "../geometry";
import { isId } from "../ink";
import { MARK_FIELD, PANEL_FIELDS } from "./fields";
import { isPictureKey, readPictures } from "./read-pictures";
import { isMap } from "./schema";
import type { Panel, PanelId } from "./sheet";
import { REDRAW_KEYS } from "./to-redraw";

/** A panel without its ink. */
export type BarePanel = Omit<Panel, "ink">;

/** The keys that marks are kept under, and whose they are: `side.left-knee`. */
export const MARK_KEYS: ReadonlyMap<string, { view: View; joint: JointName }> = new Map(
  VIEWS.flatMap((view) =>
    JOINTS.map((joint): [string, { view: View; joint: JointName }] => [
      markKey(view, joint),
      { view, joint },
    ]),
  ),
);

export function markKey(view: View, joint: JointName): string {
  return `${view}.${joint}`;
}

/**
 * A panel from its map, or null when it is not on the strip: removed, or without a frame and a pose,
 * which is what undoing its making leaves.
 * @param skipped told of each value that is there and makes no sense
 */
export function readPanel(
  id: PanelId,
  map: unknown,
  skipped: (place: string) => void,
): BarePanel | null {
  if (!isMap(map) || !isId(id)) {
    skipped(id);
    return null;
  }
  if (map.get("removed") === true) return null;
  const skip = (name: string): undefined => {
    if (map.get(name) !== undefined) skipped(`${id}.${name}`);
  };
  const frame = map.get("frame");
  const pose = map.get("pose");
  if (!PANEL_FIELDS.frame.fits(frame)) return skip("frame") ?? null;
  if (!PANEL_FIELDS.pose.fits(pose)) return skip("pose") ?? null;
  const hold = map.get("hold");
  const weightOn = map.get("weightOn");
  const place = map.get("place");
  return {
    id,
    frame,
    hold: PANEL_FIELDS.hold.fits(hold) ? hold : (skip("hold") ?? 0),
    pose,
    weightOn: PANEL_FIELDS.weightOn.fits(weightOn) ? weightOn : (skip("weightOn") ?? null),
    place: PANEL_FIELDS.place.fits(place) ? place : (skip("place") ?? null),
    marks: readMarks(map, (key) => skipped(`${id}.${key}`)),
    toRedraw: { side: map.get("redraw.side") === true, front: map.get("redraw.front") === true },
    pictures: readPictures(map, (key) => skipped(`${id}.${key}`)),
  };
}

function readMarks(
  map: { forEach(visit: (value: unknown, key: string) => void): void },
  skipped: (key: string) => void,
): PoseMarks {
  const found: Record<View, Partial<Record<JointName, Mark>>> = { side: {}, front: {} };
  map.forEach((value, key) => {
    const named = MARK_KEYS.get(key);
    if (named === undefined) {
      const isSign = REDRAW_KEYS.has(key) && value === true;
      if (key.includes(".") && !isSign && !isPictureKey(key)) skipped(key);
    } else if (MARK_FIELD.fits(value)) {
      const [x, y, precision] = value;
      found[named.view][named.joint] = { x, y, precision };
    } else {
      skipped(key);
    }
  });
  return { side: inOrder(found.side), front: inOrder(found.front) };
}

/** Marks from the top down, whoever placed them first: equal sheets also look equal. */
function inOrder(found: Partial<Record<JointName, Mark>>): ViewMarks {
  const marks: Partial<Record<JointName, Mark>> = {};
  for (const joint of JOINTS) {
    const mark = found[joint];
    if (mark !== undefined) marks[joint] = mark;
  }
  return marks;
}
