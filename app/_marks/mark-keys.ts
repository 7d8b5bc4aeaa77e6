import type { Point } from "../../lib/geometry";

const STEP = { fine: 1, coarse: 10 } as const; // panel units

const WAYS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

interface Pressed {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** How far an arrow key moves a mark: 1 panel unit, 10 with Shift; null for every other key. */
export function nudgeOf({ key, shiftKey, altKey, ctrlKey, metaKey }: Pressed): Point | null {
  const way = WAYS[key];
  if (way === undefined || altKey || ctrlKey || metaKey) return null;
  const step = shiftKey ? STEP.coarse : STEP.fine;
  return { x: way.x * step, y: way.y * step };
}

/** Whether a key moves marks, whatever is held down beside it. */
export function isNudge(key: string): boolean {
  return key in WAYS;
}
