import { type Bounds, boundsOf, outlineOf, type Stroke } from "../../lib/ink";
import { type BitmapSize, boxOf, contextOf, outlinePath, paintPath, pixelBox } from "../_paper";
import { dirtyBox, type GrowingStroke } from "./dirty-box";

/** A stroke on its way to the document, of this hand or another. */
export interface ShownStroke extends GrowingStroke, Pick<Stroke, "nib" | "colour"> {
  readonly strokeId: string | null;
}

/** The canvas over the ink, for strokes in progress. */
export interface LiveCanvas {
  /** Paints what changed since last time and nothing else. */
  show(strokes: readonly ShownStroke[], size: BitmapSize): void;
  /** Lets the pixels go; what it shows next is painted afresh. */
  rest(): void;
}

interface Painted {
  points: number;
  lifted: boolean;
  bounds: Bounds;
  path: Path2D;
}

export function openLiveCanvas(canvas: HTMLCanvasElement): LiveCanvas {
  const painted = new Map<ShownStroke, Painted>();
  let context: CanvasRenderingContext2D | null = null;
  let size: BitmapSize | null = null;

  function rest(): void {
    if (context === null) return;
    painted.clear();
    context = null;
    size = null;
    canvas.width = 1;
    canvas.height = 1;
  }

  function wake(wanted: BitmapSize): CanvasRenderingContext2D {
    if (context === null || size?.width !== wanted.width) {
      painted.clear();
      canvas.width = wanted.width;
      canvas.height = wanted.height;
      context = contextOf(canvas);
      size = wanted;
    }
    return context;
  }

  /** Brings a stroke's path up to date. Answers with the box in which it looks different. */
  function follow(stroke: ShownStroke): Bounds | null {
    const lifted = stroke.strokeId !== null;
    const before = painted.get(stroke);
    const ended = before !== undefined && before.lifted !== lifted;
    const box = ended
      ? boundsOf(stroke)
      : dirtyBox(stroke, before === undefined ? 0 : before.points);
    if (box === null) return null;
    painted.set(stroke, {
      points: stroke.points.length,
      lifted,
      bounds: before === undefined ? box : (boxOf([before.bounds, box]) ?? box),
      path: outlinePath(outlineOf(stroke, lifted)),
    });
    return box;
  }

  return {
    show(strokes, wanted) {
      if (strokes.length === 0 && painted.size === 0) return;
      const surface = wake(wanted);
      const boxes: Bounds[] = [];
      const shown = new Set(strokes);
      for (const [stroke, { bounds }] of painted) {
        if (shown.has(stroke)) continue;
        boxes.push(bounds);
        painted.delete(stroke);
      }
      for (const stroke of strokes) {
        const box = follow(stroke);
        if (box !== null) boxes.push(box);
      }
      const box = boxOf(boxes);
      if (box !== null) paintBox(surface, wanted.scale, box, painted);
    },
    rest,
  };
}

function paintBox(
  context: CanvasRenderingContext2D,
  scale: number,
  box: Bounds,
  painted: ReadonlyMap<ShownStroke, Painted>,
): void {
  const { x, y, width, height } = pixelBox(box, scale);
  context.save();
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.beginPath();
  context.rect(x, y, width, height);
  context.clip();
  context.clearRect(x, y, width, height);
  context.setTransform(scale, 0, 0, scale, 0, 0);
  for (const [stroke, { path }] of painted) paintPath(context, path, stroke, { scale, share: 1 });
  context.restore();
}
