import { outlineOf, type Stroke } from "../../lib/ink";

type Drawn = Pick<Stroke, "nib" | "width" | "points">;

/** A stroke never changes, so what it fills is worked out once, for as long as somebody holds it. */
const outlines = new WeakMap<Drawn, Path2D>();
const middles = new WeakMap<Drawn, Path2D>();

/** The path that a finished stroke fills. Units: panel units. */
export function strokePath(stroke: Drawn): Path2D {
  const kept = outlines.get(stroke);
  if (kept !== undefined) return kept;
  const path = outlinePath(outlineOf(stroke));
  outlines.set(stroke, path);
  return path;
}

/** The line down the middle of a stroke, for what is only hinted at. Units: panel units. */
export function middlePath(stroke: Drawn): Path2D {
  const kept = middles.get(stroke);
  if (kept !== undefined) return kept;
  const path = new Path2D();
  stroke.points.forEach(([x, y], index) => {
    if (index === 0) path.moveTo(x, y);
    path.lineTo(x, y); // a dot is a line to where it began, with round ends
  });
  middles.set(stroke, path);
  return path;
}

const MIN_OUTLINE_POINTS = 3; // fewer enclose nothing: the pen only touched the paper

/** A closed outline, rounded off: curves through the middles of its edges. */
export function outlinePath(outline: readonly (readonly [x: number, y: number])[]): Path2D {
  const path = new Path2D();
  const [first] = outline;
  const last = outline.at(-1);
  if (first === undefined || last === undefined || outline.length < MIN_OUTLINE_POINTS) return path;
  path.moveTo((last[0] + first[0]) / 2, (last[1] + first[1]) / 2);
  outline.forEach(([x, y], index) => {
    const [nextX, nextY] = outline[index + 1] ?? first;
    path.quadraticCurveTo(x, y, (x + nextX) / 2, (y + nextY) / 2);
  });
  path.closePath();
  return path;
}
