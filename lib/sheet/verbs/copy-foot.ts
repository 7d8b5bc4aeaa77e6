import type * as Y from "yjs";
import type { Side } from "../../body";
import { footCopy } from "../pass-on/foot-copy";
import type { PassOn } from "../pass-on/passing";
import { writePassing } from "../pass-on/write-passing";
import type { Panel } from "../sheet";
import type { PassOnInk } from "./copy-pose";

/**
 * Gives a panel one foot of another (see `footCopy`), in one edit. When two do so at once, each mark
 * of the foot keeps the later write; a knee that another moved meanwhile may then not fit the foot,
 * which the limb's length tells.
 *
 * Errors:  SheetError "panel-missing"; what cannot be copied is answered, and nothing is written
 */
export function copyFoot(
  doc: Y.Doc,
  from: Panel,
  to: Panel,
  { side, ink, newId }: PassOnInk & { readonly side: Side },
): PassOn {
  const given = footCopy(from, to, { side, ink });
  writePassing(doc, given, newId);
  return given;
}
