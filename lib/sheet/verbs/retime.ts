import type * as Y from "yjs";
import { type NewTempo, planRetime } from "../timing/plan-retime";
import { readTimes, writeTimes } from "../timing/times";

/**
 * Gives the walk, or one of its steps, another tempo (see `planRetime`), as one edit: frames of panels,
 * frames per step, loop and advance. Where two people time one panel at once the later write wins; a
 * strip that two retimed at once may want evening out, and no panel is lost.
 *
 * Errors:  RangeError for frames that a step may not have, before anything is written
 */
export function retime(doc: Y.Doc, tempo: NewTempo): void {
  writeTimes(doc, planRetime(readTimes(doc), tempo));
}
