import type * as Y from "yjs";
import type { PassOn } from "../pass-on/passing";
import { poseCopy } from "../pass-on/pose-copy";
import { writePassing } from "../pass-on/write-passing";
import type { Panel, StrokeId } from "../sheet";

/** Whether ink comes along, and an id for each stroke that does. */
export interface PassOnInk {
  readonly ink: boolean;
  readonly newId: () => StrokeId;
}

/**
 * Gives a panel the pose of another (see `poseCopy`), in one edit. When two give one panel two poses
 * at once, each mark keeps the later write, and that is the same person's for every mark both set; ink
 * that came along stays from both.
 *
 * Errors:  SheetError "panel-missing"; what cannot be copied is answered, and nothing is written
 */
export function copyPose(doc: Y.Doc, from: Panel, to: Panel, { ink, newId }: PassOnInk): PassOn {
  const given = poseCopy(from, to, ink);
  writePassing(doc, given, newId);
  return given;
}
