import type * as Y from "yjs";
import type { Side } from "../../body";
import { footOnPrint } from "../pass-on/foot-on-print";
import type { PassOn } from "../pass-on/passing";
import { writePassing } from "../pass-on/write-passing";
import type { PanelId, Sheet } from "../sheet";

/**
 * Puts a planted foot where it was put down (see `footOnPrint`), in one edit. When somebody moves one
 * of its marks at the same time, that mark keeps the later write.
 *
 * Errors:  SheetError "panel-missing"; what cannot be done is answered, and nothing is written
 */
export function footOnFootprint(doc: Y.Doc, sheet: Sheet, panel: PanelId, side: Side): PassOn {
  const given = footOnPrint(sheet, panel, side);
  writePassing(doc, given, noInk);
  return given;
}

function noInk(): never {
  throw new Error("a foot goes to its footprint without ink");
}
