import { cutStroke, touchesStroke } from "../../lib/ink";
import type { InkStroke } from "../../lib/sheet";
import { strokeBounds } from "../_paper";
import type { PenSample } from "./pen-sample";

/** The rubber on its way over the ink, taking away only what it touches. */
export interface PartRubbing {
  /** What is left of each stroke that was touched. */
  readonly pieces: ReadonlyMap<string, readonly InkStroke[]>;
  /** Answers whether anything more was rubbed away. */
  move(ink: readonly InkStroke[], samples: readonly PenSample[]): boolean;
  /** The ink as it will be. */
  left(ink: readonly InkStroke[]): readonly InkStroke[];
}

/**
 * Begins to rub out parts.
 *
 * Units:   panel units
 */
export function beginPartRubbing(first: PenSample, radius: number): PartRubbing {
  const pieces = new Map<string, readonly InkStroke[]>();
  let from: PenSample = first;

  function rub(stroke: InkStroke, to: PenSample): boolean {
    const parts = pieces.get(stroke.id) ?? [stroke];
    const move = { from, to, radius };
    if (!touchesStroke(stroke, move, strokeBounds(stroke))) return false;
    const left = parts.flatMap((part) =>
      touchesStroke(part, move) ? cutStroke(part, (point) => !isUnder(point, move)) : [part],
    );
    if (left.length === parts.length && left.every((part, n) => part === parts[n])) return false;
    pieces.set(stroke.id, left);
    return true;
  }

  return {
    pieces,
    move(ink, samples) {
      let changed = false;
      for (const to of samples) {
        for (const stroke of ink) changed = rub(stroke, to) || changed;
        from = to;
      }
      return changed;
    },
    left: (ink) => ink.flatMap((stroke) => pieces.get(stroke.id) ?? [stroke]),
  };
}

interface Move {
  readonly from: PenSample;
  readonly to: PenSample;
  readonly radius: number;
}

/** Whether a point lies under the round tip on its way. */
function isUnder({ x, y }: { readonly x: number; readonly y: number }, { from, to, radius }: Move) {
  const way = { x: to.x - from.x, y: to.y - from.y };
  const length = way.x ** 2 + way.y ** 2;
  const along = length === 0 ? 0 : ((x - from.x) * way.x + (y - from.y) * way.y) / length;
  const share = Math.min(1, Math.max(0, along));
  return (x - from.x - way.x * share) ** 2 + (y - from.y - way.y * share) ** 2 <= radius ** 2;
}
