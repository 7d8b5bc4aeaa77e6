import type * as Y from "yjs";
import { VIEWS, type View } from "../geometry";
import { paperOf, type Stroke, StrokeError } from "../ink";
import { isMap, panelsOf, strokesOf } from "./schema";
import type { PanelId, StrokeId } from "./sheet";

/** One view of a panel. */
export type Paper = Pick<Stroke, "panel" | "view">;

/** The key of a panel's map that says its ink does not follow its figure yet: one for each view. */
export function redrawKey(view: View): `redraw.${View}` {
  return `redraw.${view}`;
}

/** The views that such keys speak of, by key. */
export const REDRAW_KEYS: ReadonlyMap<string, View> = new Map(
  VIEWS.map((view) => [redrawKey(view), view]),
);

/**
 * Says that a panel is to redraw in these views, those of them that have ink: its figure went elsewhere.
 * Called by verbs that move marks away from ink, within their transaction. (Placing one mark is not such
 * a verb: it corrects the mark.) When somebody draws there at the same time, it stays to redraw.
 */
export function leaveToRedraw(doc: Y.Doc, panel: PanelId, views: Iterable<View>): void {
  const map = panelsOf(doc).get(panel);
  const wanted = new Set(views);
  if (!isMap(map) || wanted.size === 0) return;
  for (const view of inkedViews(doc, panel)) if (wanted.has(view)) map.set(redrawKey(view), true);
}

/** Says that these papers' ink was changed, so that none of them is to redraw. Called within a verb. */
export function inkFollows(doc: Y.Doc, papers: Iterable<Paper>): void {
  for (const { panel, view } of papers) {
    const map = panelsOf(doc).get(panel);
    if (isMap(map) && map.has(redrawKey(view))) map.delete(redrawKey(view));
  }
}

/** The papers that strokes of the document lie on. Ids that are not there, or unreadable, are passed over. */
export function papersOf(doc: Y.Doc, ids: Iterable<StrokeId>): readonly Paper[] {
  return [...ids].flatMap((id) => {
    const paper = paperOrNull(strokesOf(doc).get(id));
    return paper === null ? [] : [paper];
  });
}

function inkedViews(doc: Y.Doc, panel: PanelId): ReadonlySet<View> {
  const views = new Set<View>();
  strokesOf(doc).forEach((bytes) => {
    const paper = paperOrNull(bytes);
    if (paper?.panel === panel) views.add(paper.view);
  });
  return views;
}

function paperOrNull(bytes: unknown): Paper | null {
  if (!(bytes instanceof Uint8Array)) return null;
  try {
    return paperOf(bytes);
  } catch (error) {
    if (error instanceof StrokeError) return null;
    throw error;
  }
}
