import type * as Y from "yjs";
import { type BodyShift, bodyShift } from "../pass-on/body-shift";
import type { PassOn } from "../pass-on/passing";
import { writePassing } from "../pass-on/write-passing";
import type { Panel } from "../sheet";

/**
 * Raises, lowers or shifts the hips and all they carry, the feet kept (see `bodyShift`), in one edit.
 * When two do so at once, each mark keeps the later write, the same person's for every mark: the body
 * is shifted once.
 *
 * Errors:  SheetError "panel-missing"; what cannot be done is answered, and nothing is written
 */
export function shiftBody(doc: Y.Doc, panel: Panel, shift: BodyShift): PassOn {
  const given = bodyShift(panel, shift);
  writePassing(doc, given, noInk);
  return given;
}

function noInk(): never {
  throw new Error("a body is shifted without ink");
}
