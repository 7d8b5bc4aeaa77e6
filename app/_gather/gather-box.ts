import type { Point } from "../../lib/geometry";
import { type Bounds, boundsOf, type Shaping, type Stroke, UNSHAPED } from "../../lib/ink";

/** What of the gathered strokes' box is taken hold of. */
export type Grip =
  | { readonly kind: "move" }
  | { readonly kind: "turn" }
  | { readonly kind: "scale"; readonly corner: Point; readonly about: Point };

/** The box round strokes, their width included; null round none. Panel units. */
export function boxRound(strokes: readonly Pick<Stroke, "points" | "width">[]): Bounds | null {
  if (strokes.length === 0) return null;
  const all = strokes.map(boundsOf);
  return {
    left: Math.min(...all.map(({ left }) => left)),
    top: Math.min(...all.map(({ top }) => top)),
    right: Math.max(...all.map(({ right }) => right)),
    bottom: Math.max(...all.map(({ bottom }) => bottom)),
  };
}

export function middleOf({ left, top, right, bottom }: Bounds): Point {
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
}

/** The corners, each with the one across from it, which stays while it is pulled. */
export function cornersOf({ left, top, right, bottom }: Bounds) {
  const at = (x: number, y: number, acrossX: number, acrossY: number) => ({
    corner: { x, y },
    about: { x: acrossX, y: acrossY },
  });
  return [
    at(left, top, right, bottom),
    at(right, top, left, bottom),
    at(right, bottom, left, top),
    at(left, bottom, right, top),
  ];
}

const STALK_PX = 26; // how far over the box its turning handle stands

/** Where the turning handle stands; below the box where there is no paper above. Panel units. */
export function turnHandle(box: Bounds, pixel: number): Point {
  const above = box.top - STALK_PX * pixel;
  return { x: middleOf(box).x, y: above > 0 ? above : box.bottom + STALK_PX * pixel };
}

/** Papers from this width on have room for handles; smaller ones move alone. CSS pixels. */
export const ROOM_FOR_HANDLES = 200;
const REACH_PX = 13; // targets of 26 px

/** What a press at a point takes hold of; null: nothing of the box. `pixel`: panel units a CSS pixel. */
export function gripAt(box: Bounds, at: Point, pixel: number, handles: boolean): Grip | null {
  const reach = REACH_PX * pixel;
  const near = (to: Point) => Math.hypot(at.x - to.x, at.y - to.y) <= reach;
  if (handles) {
    if (near(turnHandle(box, pixel))) return { kind: "turn" };
    const corner = cornersOf(box).find((one) => near(one.corner));
    if (corner !== undefined) return { kind: "scale", ...corner };
  }
  const margin = reach / 2;
  const inside =
    at.x > box.left - margin &&
    at.x < box.right + margin &&
    at.y > box.top - margin &&
    at.y < box.bottom + margin;
  return inside ? { kind: "move" } : null;
}

const LEAST_SCALE = 0.05;
const MOST_SCALE = 20;

/** What a pull from one point to another does to what is gathered. Panel units. */
export function pulled(box: Bounds, grip: Grip, from: Point, to: Point): Shaping {
  const by = { x: to.x - from.x, y: to.y - from.y };
  if (grip.kind === "move") return { ...UNSHAPED, by };
  if (grip.kind === "turn") {
    const about = middleOf(box);
    const angle = (point: Point) => Math.atan2(point.y - about.y, point.x - about.x);
    return { ...UNSHAPED, about, turn: angle(to) - angle(from) };
  }
  // The corner goes as far out along the diagonal as the pointer does.
  const { corner, about } = grip;
  const diagonal = { x: corner.x - about.x, y: corner.y - about.y };
  const length = diagonal.x ** 2 + diagonal.y ** 2;
  const grown = length === 0 ? 0 : (by.x * diagonal.x + by.y * diagonal.y) / length;
  return { ...UNSHAPED, about, scale: Math.min(MOST_SCALE, Math.max(LEAST_SCALE, 1 + grown)) };
}

/** A shaping as an SVG transform. */
export function transformOf({ about, scale, turn, by }: Shaping): string {
  const cos = scale * Math.cos(turn);
  const sin = scale * Math.sin(turn);
  const right = about.x - cos * about.x + sin * about.y + by.x;
  const down = about.y - sin * about.x - cos * about.y + by.y;
  return `matrix(${cos} ${sin} ${-sin} ${cos} ${right} ${down})`;
}
