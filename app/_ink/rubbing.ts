import { touchesStroke } from "../../lib/ink";
import type { InkStroke } from "../../lib/sheet";
import { strokeBounds } from "../_paper";
import type { PenSample } from "./pen-sample";

/** The rubber on its way over the ink: which strokes it has crossed so far. */
export interface Rubbing {
  readonly crossed: ReadonlySet<string>;
  /** Answers whether further strokes were crossed. */
  move(ink: readonly InkStroke[], samples: readonly PenSample[]): boolean;
}

/**
 * Begins to rub.
 *
 * Units:   panel units
 */
export function beginRubbing(first: PenSample, radius: number): Rubbing {
  const crossed = new Set<string>();
  let from: PenSample = first;
  return {
    crossed,
    move(ink, samples) {
      const before = crossed.size;
      for (const to of samples) {
        for (const stroke of ink) {
          if (crossed.has(stroke.id)) continue;
          if (touchesStroke(stroke, { from, to, radius }, strokeBounds(stroke))) {
            crossed.add(stroke.id);
          }
        }
        from = to;
      }
      return crossed.size > before;
    },
  };
}
