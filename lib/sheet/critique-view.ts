import type * as Y from "yjs";
import type { OnPurpose } from "../gait";
import type { Critique } from "./critique";
import { readCritiqueCounting } from "./read-critique";
import { onPurposeIn } from "./schema";

/** A critique document seen as plain values, kept up to date. */
export interface CritiqueView {
  /** The same object until something changes; so are the entries that nobody touched. */
  getSnapshot(): Critique;
  /** Calls back after every transaction that changed the critique; returns the way to stop it. */
  subscribe(onChange: () => void): () => void;
  /** Ids of what could not be read and is left out. */
  skipped(): readonly string[];
  /** Lets the document go. The last snapshot stays. */
  close(): void;
}

/**
 * Reads a critique and reads it again when it changed: entries are few. Its snapshot always equals a fresh
 * `readCritique`. Whoever opens it closes it.
 */
export function openCritiqueView(doc: Y.Doc): CritiqueView {
  const listeners = new Set<() => void>();
  let reading = readCritiqueCounting(doc);
  const onChange = ({ keysChanged }: Y.YMapEvent<unknown>): void => {
    const before = new Map(reading.critique.onPurpose.map((entry) => [entry.id, entry]));
    const { critique, skipped } = readCritiqueCounting(doc);
    const kept = (entry: OnPurpose): OnPurpose =>
      keysChanged.has(entry.id) ? entry : (before.get(entry.id) ?? entry);
    reading = { critique: { onPurpose: critique.onPurpose.map(kept) }, skipped };
    for (const listener of [...listeners]) listener();
  };
  onPurposeIn(doc).observe(onChange);
  return {
    getSnapshot: () => reading.critique,
    subscribe(onChange) {
      const listener = () => onChange(); // the same function may subscribe twice
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    skipped: () => reading.skipped,
    close() {
      onPurposeIn(doc).unobserve(onChange);
      listeners.clear();
    },
  };
}
