import type * as Y from "yjs";
import { planEvenOut } from "../timing/plan-even-out";
import type { TimeScope } from "../timing/time-plan";
import { readTimes, writeTimes } from "../timing/times";

/**
 * Lays a strip's panels, or those of one step, on the nearest even layout (see `planEvenOut`), as one
 * edit. It writes the frames of those that move and nothing else; where two people time one panel at
 * once the later write wins, and no panel is lost.
 */
export function evenOut(doc: Y.Doc, scope: TimeScope): void {
  writeTimes(doc, planEvenOut(readTimes(doc), scope));
}
