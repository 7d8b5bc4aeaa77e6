import type * as Y from "yjs";
import { limbJoint, SIDES } from "../../body";
import type { Fix, FixChange } from "../../gait";
import { HEAD_FIELDS, ID_FIELD, MARK_FIELD, PANEL_FIELDS } from "../fields";
import { emptyPanel } from "../lay-out";
import { markKey } from "../read-panel";
import { requireField } from "../require-field";
import { headOf, ORIGIN, panelOf, panelsOf } from "../schema";
import type { PanelId } from "../sheet";
import { loopAfterAdd } from "../timing/loop-after";
import { readTimes } from "../timing/times";
import { leaveToRedraw } from "../to-redraw";
import { panelMap } from "../write-sheet";

type Of<Kind extends FixChange["kind"]> = Extract<FixChange, { readonly kind: Kind }>;

/**
 * Does all that a fix would do (see `fixFor`), in one edit. A view with ink whose marks move is left to redraw.
 * A mark that was lifted meanwhile stays away. When two fix one thing at once each value keeps the later
 * write; two who both add a missing pose get two panels, side by side.
 *
 * Errors:  SheetError "panel-missing"; RangeError for a value that a panel may not have; nothing is written
 * @param newId an id for each panel that is added
 */
export function applyFix(
  doc: Y.Doc,
  { changes }: Pick<Fix, "changes">,
  newId: () => PanelId,
): void {
  const writes = changes.map((change) => prepared(doc, change, newId));
  doc.transact(() => {
    for (const write of writes) write();
  }, ORIGIN.hand);
}

/** What would be written, once it is known that it may be. */
function prepared(doc: Y.Doc, change: FixChange, newId: () => PanelId): () => void {
  switch (change.kind) {
    case "move-marks":
      return moveMarks(doc, change);
    case "exchange-sides":
      return exchangeSides(doc, change);
    case "add-panel":
      return addPanel(doc, change, newId());
    case "advance":
      return setAdvance(doc, change);
    case "slide":
      return setFields(doc, change.panel, { frame: change.frame });
    case "place":
      return setFields(doc, change.panel, { place: change.place });
    case "relabel":
      return setFields(doc, change.panel, { pose: change.pose, weightOn: change.weightOn });
  }
}

function moveMarks(doc: Y.Doc, { panel, view, marks }: Of<"move-marks">): () => void {
  const map = panelOf(doc, panel);
  const moved = marks.flatMap(({ joint, x, y }) => {
    const mark = map.get(markKey(view, joint));
    if (!MARK_FIELD.fits(mark)) return [];
    const triple = [x, y, mark[2]] as const;
    requireField("applyFix", "a mark that is", MARK_FIELD, triple);
    return [{ key: markKey(view, joint), triple }];
  });
  return () => {
    for (const { key, triple } of moved) map.set(key, [...triple]);
    if (moved.length > 0) leaveToRedraw(doc, panel, [view]);
  };
}

function setAdvance(doc: Y.Doc, { advance }: Of<"advance">): () => void {
  requireField("applyFix", "an advance that is", HEAD_FIELDS.advance, advance);
  return () => headOf(doc).set("advance", advance);
}

/** Each mark under the other side's name, as it is then: two who do it at once leave one exchange. */
function exchangeSides(doc: Y.Doc, { panel, view, joints }: Of<"exchange-sides">): () => void {
  const map = panelOf(doc, panel);
  const pairs = joints.map((joint) => {
    const [left, right] = SIDES.map((side) => markKey(view, limbJoint(side, joint)));
    return { left, right };
  });
  const writes = pairs.flatMap(({ left, right }) => {
    if (left === undefined || right === undefined) return [];
    return [
      { key: left, mark: map.get(right) },
      { key: right, mark: map.get(left) },
    ];
  });
  return () => {
    for (const { key, mark } of writes) {
      if (MARK_FIELD.fits(mark)) map.set(key, [...mark]);
      else map.delete(key);
    }
  };
}

function setFields(
  doc: Y.Doc,
  panel: PanelId,
  fields: Partial<Pick<Of<"add-panel">, "frame" | "place" | "pose" | "weightOn">>,
): () => void {
  const map = panelOf(doc, panel);
  requireFields(fields);
  return () => {
    for (const [name, value] of Object.entries(fields)) {
      if (map.get(name) !== value) map.set(name, value);
    }
  };
}

function addPanel(doc: Y.Doc, added: Of<"add-panel">, id: PanelId): () => void {
  const { frame, pose, weightOn, place, marks } = added;
  requireField("applyFix", "an id of", ID_FIELD, id);
  requireFields({ frame, pose, weightOn, place });
  const map = panelMap({ ...emptyPanel({ id, frame, pose, weightOn, place }), marks });
  return () => {
    const loop = loopAfterAdd(readTimes(doc), frame);
    panelsOf(doc).set(id, map);
    if (loop !== null) headOf(doc).set("loop", loop);
  };
}

function requireFields(
  fields: Partial<Pick<Of<"add-panel">, "frame" | "place" | "pose" | "weightOn">>,
): void {
  const { frame, place, pose, weightOn } = fields;
  if (frame !== undefined) requireField("applyFix", "a frame that is", PANEL_FIELDS.frame, frame);
  if (place !== undefined) requireField("applyFix", "a place that is", PANEL_FIELDS.place, place);
  if (pose !== undefined) requireField("applyFix", "a pose that is", PANEL_FIELDS.pose, pose);
  if (weightOn !== undefined) {
    requireField("applyFix", "weight on", PANEL_FIELDS.weightOn, weightOn);
  }
}
