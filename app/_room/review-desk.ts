import type { Review } from "../../lib/gait";
import { type CritiqueView, measuredWalkOf, type SheetView } from "../../lib/sheet";
import { fetchReader, type Reader, readerAtHand } from "./fetch-reader";
import { createStore, type Store } from "./store";

/** Where what reads the walk has got to: `awaited` until it is first asked for and comes, or does not. */
export type ReaderState = "awaited" | "at-hand" | "unfetched" | "asked-again";

/** Keeps the review of the sheet as it stands; null as long as it was not read: then nothing is known of it. */
export interface ReviewDesk extends Store<Review | null> {
  readonly reader: Store<ReaderState>;
  /**
   * The sheet as it was read, once it is: fetches what reads it where that is not at hand.
   *
   * Errors:  rejects where that cannot be fetched; the sheet stays unread until somebody asks again
   */
  read(): Promise<Review>;
  /** The pen is down: nothing is measured, nothing is said, until it lifts. */
  hold(): void;
  release(): void;
  /** Is a pen down? */
  readonly held: Store<boolean>;
  close(): void;
}

/** Where the reader comes from. */
export interface ReaderSource {
  atHand(): Reader | null;
  fetch(): Promise<Reader>;
}

const FETCHED: ReaderSource = { atHand: readerAtHand, fetch: fetchReader };

export function openReviewDesk(
  sheet: SheetView,
  said: CritiqueView,
  source: ReaderSource = FETCHED,
): ReviewDesk {
  const measure = ({ reviewWalk }: Reader) => {
    const now = sheet.getSnapshot();
    return reviewWalk(measuredWalkOf(now), now.head.yardstick, said.getSnapshot().onPurpose);
  };
  const before = source.atHand();
  const review = createStore<Review | null>(before === null ? null : measure(before));
  const reader = createStore<ReaderState>(before === null ? "awaited" : "at-hand");
  const held = createStore(false);
  let closed = false;
  let asked: number | null = null;
  const run = () => {
    asked = null;
    const reads = source.atHand();
    if (reads !== null && !held.get()) review.set(measure(reads));
  };
  const ask = () => {
    if (!held.get()) asked ??= requestAnimationFrame(run);
  };
  const fetched = async () => {
    if (reader.get() === "unfetched") reader.set("asked-again");
    try {
      return await source.fetch();
    } catch (reason) {
      if (!closed) reader.set("unfetched");
      throw reason;
    }
  };
  const stops = [sheet.subscribe(ask), said.subscribe(ask)];
  return {
    get: review.get,
    subscribe: review.subscribe,
    reader,
    async read() {
      const reads = await fetched();
      const known = review.get() ?? measure(reads);
      if (closed) return known;
      if (!held.get()) review.set(known);
      reader.set("at-hand");
      return known;
    },
    held,
    hold() {
      held.set(true);
    },
    release() {
      held.set(false);
      ask();
    },
    close() {
      closed = true;
      for (const stop of stops) stop();
      if (asked !== null) cancelAnimationFrame(asked);
    },
  };
}
