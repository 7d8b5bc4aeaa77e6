import type * as Y from "yjs";
import type { PassOn } from "../pass-on/passing";
import { poseMirror } from "../pass-on/pose-copy";
import { writePassing } from "../pass-on/write-passing";
import type { Panel } from "../sheet";
import type { PassOnInk } from "./copy-pose";

/**
 * Gives a panel the pose of its partner in the other step, left and right exchanged (see
 * `poseMirror`), in one edit. Two at once end as with `copyPose`.
 *
 * Errors:  SheetError "panel-missing"; what cannot be mirrored is answered, and nothing is written
 */
export function mirrorPose(doc: Y.Doc, from: Panel, to: Panel, { ink, newId }: PassOnInk): PassOn {
  const given = poseMirror(from, to, ink);
  writePassing(doc, given, newId);
  return given;
}
