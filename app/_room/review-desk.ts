import { type Review, reviewWalk } from "../../lib/gait";
import { type CritiqueView, measuredWalkOf, type SheetView } from "../../lib/sheet";
import { createStore, type Store } from "./store";

/** Keeps the review of the sheet as it stands. */
export interface ReviewDesk extends Store<Review> {
  /** The pen is down: nothing is measured, nothing is said, until it lifts. */
  hold(): void;
  release(): void;
  /** Is a pen down? */
  readonly held: Store<boolean>;
  close(): void;
}

export function openReviewDesk(sheet: SheetView, said: CritiqueView): ReviewDesk {
  const measure = () => {
    const now = sheet.getSnapshot();
    return reviewWalk(measuredWalkOf(now), now.head.yardstick, said.getSnapshot().onPurpose);
  };
  const review = createStore<Review>(measure());
  const held = createStore(false);
  let asked: number | null = null;
  const run = () => {
    asked = null;
    if (!held.get()) review.set(measure());
  };
  const ask = () => {
    if (!held.get()) asked ??= requestAnimationFrame(run);
  };
  const stops = [sheet.subscribe(ask), said.subscribe(ask)];
  return {
    get: review.get,
    subscribe: review.subscribe,
    held,
    hold() {
      held.set(true);
    },
    release() {
      held.set(false);
      ask();
    },
    close() {
      for (const stop of stops) stop();
      if (asked !== null) cancelAnimationFrame(asked);
    },
  };
}
