import type { Bounds } from "../../lib/ink";
import type { InkStroke } from "../../lib/sheet";
import type { BitmapSize } from "./bitmap-size";
import { boxOf, meet, pixelBox } from "./box";
import { type PaintQueue, paintQueue } from "./paint-queue";
import { paintStroke } from "./paint-stroke";
import { repaintPlan } from "./repaint-plan";
import { strokeBounds } from "./stroke-bounds";

type Ink = readonly InkStroke[];

/** The ink of one view as pixels, repainted only where it changed. */
export interface InkBitmap {
  /** Small changes are painted at once, a whole view when the queue comes to it. */
  show(ink: Ink, size: BitmapSize): void;
  /** Shows these strokes as nearly gone: they are being rubbed out. */
  fade(ids: ReadonlySet<string>): void;
  /** Lets the pixels go while nobody sees them. */
  rest(): void;
}

const FADED = 0.16; // of a stroke's strength: still there, plainly going
const STROKES_A_PIECE = 24;
const NOBODY: ReadonlySet<string> = new Set();

/**
 * Keeps a canvas's pixels equal to a list of strokes.
 *
 * @param onPainted told after painting which list the pixels now show
 */
export function openInkBitmap(
  canvas: HTMLCanvasElement,
  onPainted: (ink: Ink) => void,
  queue: PaintQueue = paintQueue,
): InkBitmap {
  let painted: { ink: Ink; size: BitmapSize } | null = null;
  let waiting: { ink: Ink; size: BitmapSize } | null = null;
  let faded = NOBODY;

  const share = ({ id }: InkStroke) => (faded.has(id) ? FADED : 1);

  function finish(ink: Ink, size: BitmapSize): void {
    painted = { ink, size };
    waiting = null;
    // What was rubbed out and comes back by undo comes back at full strength.
    if (faded.size > 0) faded = new Set(ink.map(({ id }) => id).filter((id) => faded.has(id)));
    onPainted(ink);
  }

  /** Paints beside the canvas, so that the old pixels, stretched, stand until the new are whole. */
  function* paintWhole(ink: Ink, size: BitmapSize): Generator<void, void> {
    const beside = document.createElement("canvas");
    beside.width = size.width;
    beside.height = size.height;
    const context = contextOf(beside);
    context.scale(size.scale, size.scale);
    for (const [index, stroke] of ink.entries()) {
      paintStroke(context, stroke, size.scale, share(stroke));
      if (index % STROKES_A_PIECE === STROKES_A_PIECE - 1) yield;
    }
    canvas.width = size.width;
    canvas.height = size.height;
    contextOf(canvas).drawImage(beside, 0, 0);
    finish(ink, size);
  }

  function paintBox(ink: Ink, { scale }: BitmapSize, box: Bounds): void {
    const { x, y, width, height } = pixelBox(box, scale);
    const context = contextOf(canvas);
    context.save();
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.beginPath();
    context.rect(x, y, width, height);
    context.clip();
    context.clearRect(x, y, width, height);
    context.setTransform(scale, 0, 0, scale, 0, 0);
    // The box in panel units again: its soft edge may reach strokes that the change does not.
    const reach = {
      left: x / scale,
      top: y / scale,
      right: (x + width) / scale,
      bottom: (y + height) / scale,
    };
    const edge = 1 / scale; // thin strokes are shown a little wider than their bounds
    for (const stroke of ink) {
      const bounds = strokeBounds(stroke);
      const near = {
        left: bounds.left - edge,
        top: bounds.top - edge,
        right: bounds.right + edge,
        bottom: bounds.bottom + edge,
      };
      if (meet(near, reach)) paintStroke(context, stroke, scale, share(stroke));
    }
    context.restore();
  }

  function paintOnTop(strokes: Ink, { scale }: BitmapSize): void {
    const context = contextOf(canvas);
    context.setTransform(scale, 0, 0, scale, 0, 0);
    for (const stroke of strokes) paintStroke(context, stroke, scale, share(stroke));
  }

  function paintLater(ink: Ink, size: BitmapSize): void {
    waiting = { ink, size };
    queue.add(canvas, paintWhole(ink, size));
  }

  function clear(size: BitmapSize): void {
    queue.drop(canvas);
    canvas.width = 1; // an empty paper needs no pixels
    canvas.height = 1;
    finish([], size);
    painted = null;
  }

  return {
    show(ink, size) {
      const latest = waiting ?? painted;
      if (latest !== null && latest.ink === ink && sameSize(latest.size, size)) return;
      if (ink.length === 0) {
        clear(size);
        return;
      }
      if (waiting !== null || painted === null || !sameSize(painted.size, size)) {
        // One stroke on an empty paper is somebody drawing: it must not wait its turn.
        if (painted === null && ink.length === 1) paintNow(paintWhole(ink, size));
        else paintLater(ink, size);
        return;
      }
      const plan = repaintPlan(painted.ink, ink);
      if (plan.kind === "whole") {
        paintLater(ink, size);
        return;
      }
      if (plan.kind === "append") paintOnTop(plan.strokes, size);
      if (plan.kind === "box") paintBox(ink, size, plan.box);
      finish(ink, size);
    },
    fade(ids) {
      const before = faded;
      faded = ids.size === 0 ? NOBODY : new Set(ids);
      if (painted === null || waiting !== null) return;
      const changed = painted.ink.filter(({ id }) => before.has(id) !== faded.has(id));
      const box = boxOf(changed.map(strokeBounds));
      if (box !== null) paintBox(painted.ink, painted.size, box);
    },
    rest() {
      queue.drop(canvas);
      waiting = null;
      painted = null;
      canvas.width = 1;
      canvas.height = 1;
    },
  };
}

function paintNow(job: Iterator<void>): void {
  while (job.next().done !== true);
}

function sameSize(one: BitmapSize, other: BitmapSize): boolean {
  return one.width === other.width && one.height === other.height;
}

/** A canvas's 2D context; every browser that runs this page has one. */
export function contextOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const context = canvas.getContext("2d");
  if (context === null)
    throw new Error("this canvas was already asked for another kind of context");
  return context;
}
