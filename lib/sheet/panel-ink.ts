import type { View } from "../geometry";
import { byHeight } from "./order";
import { readStroke } from "./read-stroke";
import type { InkStroke, Panel, PanelId, StrokeId } from "./sheet";

export type ViewInk = Panel["ink"];

const NO_INK: ViewInk = { side: [], front: [] };

/**
 * The strokes of a document, decoded once and sorted by panel and view. A view's list is a new one when a
 * stroke of it came, went or changed, and otherwise the same.
 */
export class PanelInk {
  readonly #strokes = new Map<StrokeId, InkStroke>();
  readonly #unreadable = new Set<StrokeId>();
  readonly #byPanel = new Map<PanelId, ViewInk>();

  get unreadable(): readonly StrokeId[] {
    return [...this.#unreadable];
  }

  of(panel: PanelId): ViewInk {
    return this.#byPanel.get(panel) ?? NO_INK;
  }

  /**
   * Takes strokes as the document has them now; undefined means gone.
   * @returns the panels whose ink changed
   */
  update(changes: Iterable<readonly [StrokeId, unknown]>): ReadonlySet<PanelId> {
    const stale = new Map<PanelId, Record<View, Map<StrokeId, InkStroke | null>>>();
    const note = (stroke: InkStroke, now: InkStroke | null): void => {
      const views = stale.get(stroke.panel) ?? { side: new Map(), front: new Map() };
      views[stroke.view].set(stroke.id, now);
      stale.set(stroke.panel, views);
    };
    for (const [id, bytes] of changes) {
      const before = this.#strokes.get(id);
      if (before !== undefined) note(before, null);
      const now = this.#take(id, bytes);
      if (now !== null) note(now, now);
    }
    for (const [panel, views] of stale) {
      const { side, front } = this.of(panel);
      this.#byPanel.set(panel, {
        side: patched(side, views.side),
        front: patched(front, views.front),
      });
    }
    return new Set(stale.keys());
  }

  #take(id: StrokeId, bytes: unknown): InkStroke | null {
    this.#strokes.delete(id);
    this.#unreadable.delete(id);
    if (bytes === undefined) return null;
    const stroke = readStroke(id, bytes, (bad) => this.#unreadable.add(bad));
    if (stroke !== null) this.#strokes.set(id, stroke);
    return stroke;
  }
}

/** A view's strokes with some of them replaced, added or (null) taken away. */
function patched(
  strokes: readonly InkStroke[],
  changes: ReadonlyMap<StrokeId, InkStroke | null>,
): readonly InkStroke[] {
  if (changes.size === 0) return strokes;
  const kept = strokes.filter(({ id }) => !changes.has(id));
  const added = [...changes.values()].filter((stroke) => stroke !== null);
  // Most often one stroke was drawn, and lies on top.
  return [...kept, ...added].sort(byHeight);
}
