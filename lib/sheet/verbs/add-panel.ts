import type * as Y from "yjs";
import { ID_FIELD, PANEL_FIELDS } from "../fields";
import { emptyPanel } from "../lay-out";
import { requireField } from "../require-field";
import { headOf, ORIGIN, panelsOf } from "../schema";
import type { Panel, PanelId } from "../sheet";
import { loopAfterAdd } from "../timing/loop-after";
import { readTimes } from "../timing/times";
import { panelMap } from "../write-sheet";

/**
 * Hangs a new, empty panel on the strip; behind the last of a loop the loop takes it in. Two people who add one at the same frame get two, side by side.
 * Undoing it takes the panel off the strip; what others drew or marked in it comes back with redo.
 *
 * Units:   frames; place in leg lengths
 * Errors:  RangeError unless frame, pose, weight and place are ones a panel may have, and the id is new
 */
export function addPanel(
  doc: Y.Doc,
  id: PanelId,
  given: Pick<Panel, "frame" | "pose" | "weightOn"> & { readonly place?: number | null },
): void {
  const { frame, pose, weightOn, place = null } = given;
  requireField("addPanel", "an id of", ID_FIELD, id);
  requireField("addPanel", "a frame that is", PANEL_FIELDS.frame, frame);
  requireField("addPanel", "a pose that is", PANEL_FIELDS.pose, pose);
  requireField("addPanel", "weight on", PANEL_FIELDS.weightOn, weightOn);
  requireField("addPanel", "a place that is", PANEL_FIELDS.place, place);
  if (panelsOf(doc).has(id)) throw new RangeError(`addPanel needs a new id, got ${id} again`);
  const panel = emptyPanel({ id, frame, pose, weightOn, place });
  doc.transact(() => {
    const loop = loopAfterAdd(readTimes(doc), frame);
    panelsOf(doc).set(id, panelMap(panel));
    if (loop !== null) headOf(doc).set("loop", loop);
  }, ORIGIN.hand);
}
