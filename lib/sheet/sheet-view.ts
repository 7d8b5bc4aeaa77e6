import type * as Y from "yjs";
import type { ViewMarks } from "../body";
import { VIEWS } from "../geometry";
import { byFrame } from "./order";
import { PanelInk } from "./panel-ink";
import { readHead } from "./read-head";
import { type BarePanel, readPanel } from "./read-panel";
import { keepingPictures } from "./read-pictures";
import { headOf, panelsOf, strokesOf } from "./schema";
import type { Panel, PanelId, Sheet, SheetHead, StrokeId } from "./sheet";

/** A document seen as one immutable sheet, kept up to date. */
export interface SheetView {
  /** The same object until something changes; so are the panels and strokes that nobody touched. */
  getSnapshot(): Sheet;
  /** Calls back after every transaction that changed the sheet; returns the way to stop it. */
  subscribe(onChange: () => void): () => void;
  /** Names of what could not be read and is left out: head fields, panels, marks, strokes. */
  skipped(): readonly string[];
  /** Lets the document go. The last snapshot stays. */
  close(): void;
}

/**
 * Reads a document once and then only what each transaction changed; strokes are decoded once. Its
 * snapshot always equals a fresh `readSheet`. Whoever opens it closes it.
 */
export function openSheetView(doc: Y.Doc): SheetView {
  const keeper = new SheetKeeper(doc);
  const listeners = new Set<() => void>();
  const changed: Changed = { head: false, panels: new Set(), strokes: new Set() };
  const stop = watch(doc, changed, () => {
    keeper.stale(changed);
    changed.head = false;
    changed.panels.clear();
    changed.strokes.clear();
    for (const listener of [...listeners]) listener();
  });
  return {
    getSnapshot: () => keeper.sheet(),
    subscribe(onChange) {
      const listener = () => onChange(); // the same function may subscribe twice
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    skipped: () => keeper.skipped(),
    close() {
      keeper.sheet();
      stop();
      listeners.clear();
    },
  };
}

interface Changed {
  head: boolean;
  readonly panels: Set<PanelId>;
  readonly strokes: Set<StrokeId>;
}

/** Notes in `changed` what each transaction touches, and tells once at its end. */
function watch(doc: Y.Doc, changed: Changed, tell: () => void): () => void {
  const head = headOf(doc);
  const panels = panelsOf(doc);
  const strokes = strokesOf(doc);
  const onHead = (): void => {
    changed.head = true;
  };
  const onPanels = (events: readonly Y.YEvent<Y.AbstractType<unknown>>[]): void => {
    for (const event of events) {
      const id = event.path[0];
      if (id !== undefined) changed.panels.add(String(id));
      else for (const key of event.keys.keys()) changed.panels.add(key);
    }
  };
  const onStrokes = (event: Y.YMapEvent<unknown>): void => {
    for (const id of event.keysChanged) changed.strokes.add(id);
  };
  const onEnd = (): void => {
    if (changed.head || changed.panels.size > 0 || changed.strokes.size > 0) tell();
  };
  head.observe(onHead);
  panels.observeDeep(onPanels);
  strokes.observe(onStrokes);
  doc.on("afterTransaction", onEnd);
  return () => {
    head.unobserve(onHead);
    panels.unobserveDeep(onPanels);
    strokes.unobserve(onStrokes);
    doc.off("afterTransaction", onEnd);
  };
}

/** The sheet so far, in pieces, and what of it must be read again before it is looked at. */
class SheetKeeper {
  readonly #doc: Y.Doc;
  readonly #ink = new PanelInk();
  readonly #bare = new Map<PanelId, BarePanel | null>();
  readonly #panels = new Map<PanelId, Panel>();
  readonly #skippedIn = new Map<string, readonly string[]>();
  #head: SheetHead | null = null;
  #sheet: Sheet | null = null;
  #stale: Changed;

  constructor(doc: Y.Doc) {
    this.#doc = doc;
    this.#stale = {
      head: true,
      panels: new Set(panelsOf(doc).keys()),
      strokes: new Set(strokesOf(doc).keys()),
    };
  }

  stale(changed: Changed): void {
    this.#stale.head ||= changed.head;
    for (const id of changed.panels) this.#stale.panels.add(id);
    for (const id of changed.strokes) this.#stale.strokes.add(id);
    this.#sheet = null;
  }

  sheet(): Sheet {
    this.#sheet ??= this.#readAgain();
    return this.#sheet;
  }

  skipped(): readonly string[] {
    this.sheet();
    return [...[...this.#skippedIn.values()].flat(), ...this.#ink.unreadable].sort();
  }

  #readAgain(): Sheet {
    const { panels, strokes } = this.#stale;
    const values = strokesOf(this.#doc);
    const inked = this.#ink.update([...strokes].map((id) => [id, values.get(id)] as const));
    for (const id of panels) this.#readBare(id);
    for (const id of new Set([...panels, ...inked])) this.#putTogether(id);
    if (this.#stale.head || this.#head === null) {
      this.#head = this.#noting("sheet", (skip) => readHead(this.#doc, skip));
    }
    this.#stale = { head: false, panels: new Set(), strokes: new Set() };
    return { head: this.#head, panels: [...this.#panels.values()].sort(byFrame) };
  }

  #readBare(id: PanelId): void {
    const before = this.#bare.get(id);
    const map = panelsOf(this.#doc).get(id);
    const now =
      map === undefined
        ? this.#noting(`panel ${id}`, () => null)
        : this.#noting(`panel ${id}`, (skip) => readPanel(id, map, skip));
    this.#bare.set(id, now && before ? keepingParts(now, before) : now);
  }

  #putTogether(id: PanelId): void {
    const bare = this.#bare.get(id) ?? null;
    if (bare === null) this.#panels.delete(id);
    else this.#panels.set(id, { ...bare, ink: this.#ink.of(id) });
  }

  #noting<T>(where: string, read: (skip: (place: string) => void) => T): T {
    const skipped: string[] = [];
    const value = read((place) => skipped.push(place));
    this.#skippedIn.set(where, skipped);
    return value;
  }
}

/**
 * A panel whose marks and pictures are the ones it had where they did not change, so that what hangs
 * on them holds.
 */
function keepingParts(now: BarePanel, before: BarePanel): BarePanel {
  const side = sameMarks(now.marks.side, before.marks.side) ? before.marks.side : now.marks.side;
  const front = sameMarks(now.marks.front, before.marks.front)
    ? before.marks.front
    : now.marks.front;
  const same = side === before.marks.side && front === before.marks.front;
  const redrawn = VIEWS.some((view) => now.toRedraw[view] !== before.toRedraw[view]);
  return {
    ...now,
    marks: same ? before.marks : { side, front },
    toRedraw: redrawn ? now.toRedraw : before.toRedraw,
    pictures: keepingPictures(now.pictures, before.pictures),
  };
}

function sameMarks(a: ViewMarks, b: ViewMarks): boolean {
  const joints = Object.keys(a) as (keyof ViewMarks)[];
  return (
    joints.length === Object.keys(b).length &&
    joints.every((joint) => {
      const one = a[joint];
      const other = b[joint];
      return one?.x === other?.x && one?.y === other?.y && one?.precision === other?.precision;
    })
  );
}
