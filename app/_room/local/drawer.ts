import { byKey, type KeptWork, keyText, type WorkKey } from "./kept-work";
import type { LocalCopy } from "./local-copy";

/** Where the work on one sheet lies until the hub has saved it. */
export interface Drawer {
  /** A key for the next thing that is done. */
  nextKey(): WorkKey;
  /** What lay here before; nothing where the browser keeps nothing. */
  read(): Promise<readonly KeptWork[]>;
  keep(work: KeptWork): void;
  drop(key: WorkKey): void;
  /** Is it on this machine's disk, by the browser's own word? */
  isKept(key: WorkKey): boolean;
  subscribe(onChange: () => void): () => void;
  /** Writes what waits, and shuts. */
  close(): void;
}

export interface DrawerDeps {
  readonly sheet: string;
  /** This page, by a name that no other page has. */
  readonly page: string;
  readonly copy: LocalCopy;
  /** ms since 1970. */
  readonly now?: () => number;
  /** Calls back after so many ms. */
  readonly after?: (ms: number, run: () => void) => void;
}

const RETRY_MS = { least: 500, most: 10_000 }; // our own choice, no source: a disk is not freed in less

/**
 * Writes work down, one transaction at a time; what comes meanwhile goes into the next. What the browser
 * would not write is tried again, for as long as the page is open, and is not called kept until then.
 */
export function openDrawer(deps: DrawerDeps): Drawer {
  const { sheet, page, copy, now = Date.now, after = setTimeoutOf } = deps;
  /** What is to be written (or, null, taken away), by key. */
  const waiting = new Map<string, { readonly key: WorkKey; readonly work: KeptWork | null }>();
  const kept = new Map<string, KeptWork>();
  const listeners = new Set<() => void>();
  let busy = false;
  let resting = false;
  let closed = false;
  let retryMs = RETRY_MS.least;
  let last = 0;
  let number = 0;

  const tell = () => {
    for (const listener of [...listeners]) listener();
  };
  const flush = async (): Promise<void> => {
    if (busy || resting || waiting.size === 0) return;
    busy = true;
    const batch = [...waiting.values()];
    waiting.clear();
    try {
      await copy.write({
        keep: batch.flatMap(({ work }) => (work === null ? [] : [work])),
        drop: batch.flatMap(({ key, work }) => (work === null ? [key] : [])),
      });
      for (const { key, work } of batch) note(key, work);
      retryMs = RETRY_MS.least;
    } catch {
      for (const item of batch) {
        const text = keyText(item.key);
        if (!waiting.has(text)) waiting.set(text, item); // what came since is newer
      }
      rest();
    }
    busy = false;
    tell();
    if (closed && (resting || waiting.size === 0)) copy.close();
    else void flush();
  };
  const note = (key: WorkKey, work: KeptWork | null) => {
    if (work === null) kept.delete(keyText(key));
    else kept.set(keyText(key), work);
  };
  const rest = () => {
    resting = true;
    after(retryMs, () => {
      resting = false;
      if (!closed) void flush();
    });
    retryMs = Math.min(RETRY_MS.most, retryMs * 2);
  };
  copy.onGone(() => {
    for (const work of kept.values()) {
      const text = keyText(work.key);
      if (!waiting.has(text)) waiting.set(text, { key: work.key, work });
    }
    kept.clear();
    tell();
    void flush();
  });

  return {
    nextKey() {
      last = Math.max(last, now()); // a clock set back must not put later work first
      return [sheet, last, ++number, page];
    },
    async read() {
      try {
        const found = await copy.read(sheet);
        for (const work of found) kept.set(keyText(work.key), work);
        return found.toSorted(byKey);
      } catch {
        return []; // this browser keeps nothing; what is drawn here says so
      }
    },
    keep(work) {
      waiting.set(keyText(work.key), { key: work.key, work });
      void flush();
    },
    drop(key) {
      const text = keyText(key);
      const isThere = kept.has(text) || busy; // or on its way there
      if (isThere) waiting.set(text, { key, work: null });
      else waiting.delete(text);
      void flush();
    },
    isKept: (key) => kept.has(keyText(key)) && waiting.get(keyText(key)) === undefined,
    subscribe(onChange) {
      listeners.add(onChange);
      return () => listeners.delete(onChange);
    },
    close() {
      listeners.clear();
      closed = true;
      resting = false;
      if (!busy && waiting.size === 0) copy.close();
      else void flush();
    },
  };
}

function setTimeoutOf(ms: number, run: () => void): void {
  setTimeout(run, ms);
}
