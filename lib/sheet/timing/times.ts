import type * as Y from "yjs";
import { PANEL_FIELDS } from "../fields";
import { byFrame } from "../order";
import { readHead } from "../read-head";
import { readPanel } from "../read-panel";
import { requireField } from "../require-field";
import { headOf, ORIGIN, panelOf, panelsOf } from "../schema";
import type { TimedPanel } from "./sections";
import type { TimedSheet, TimePlan } from "./time-plan";

/** A document's times: its panels without their ink, which would take long to unpack. */
export function readTimes(doc: Y.Doc): TimedSheet {
  const panels: TimedPanel[] = [];
  panelsOf(doc).forEach((map, id) => {
    const panel = readPanel(id, map, () => {});
    if (panel !== null) panels.push(panel);
  });
  return { head: readHead(doc, () => {}), panels: panels.sort(byFrame) };
}

/**
 * Writes what a plan changes, as one edit.
 *
 * Errors:  SheetError "panel-missing"; RangeError where a panel would leave the ruler, before anything is written
 */
export function writeTimes(doc: Y.Doc, { frames, head }: TimePlan): void {
  for (const frame of frames.values()) {
    requireField("a new time", "a frame that is", PANEL_FIELDS.frame, frame);
  }
  doc.transact(() => {
    for (const [id, frame] of frames) panelOf(doc, id).set("frame", frame);
    for (const [name, value] of Object.entries(head)) headOf(doc).set(name, value);
  }, ORIGIN.hand);
}
