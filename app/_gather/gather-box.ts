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

const PADDING_PX = 7; // between the ink and its handles, so that a dot can be taken, too

/** The box as it is shown, a little clear of the ink. `pixel`: panel units a CSS pixel. */
export function shownBox({ left, top, right, bottom }: Bounds, pixel: number): Bounds {
  const clear = PADDING_PX * pixel;
  return { left: left - clear, top: top - clear, right: right + clear, bottom: bottom + clear };
}

const STALK_PX = 26; // how far over the shown box its turning handle stands

/** Where the turning handle of a shown box stands; below it where there is no paper above. */
export function turnHandle(box: Bounds, pixel: number): Point {
  const above = box.top - STALK_PX * pixel;
  return { x: middleOf(box).x, y: above > 0 ? above : box.bottom + STALK_PX * pixel };
}

/** Papers from this width on have room for handles; smaller ones move alone. CSS pixels. */
export const ROOM_FOR_HANDLES = 200;
const REACH_PX = { pencil: 13, finger: 22 } as const; // targets of 26 and 44 px
const MOST_REACH = 0.4; // of the box's diagonal: its middle always moves it

/** With what a press meets the box. */
export interface Hold {
  /** Panel units a CSS pixel. */
  readonly pixel: number;
  /** The paper has room for handles. */
  readonly handles: boolean;
  readonly finger: boolean;
}

/** What a press at a point takes hold of; null: nothing of the box. Panel units. */
export function gripAt(box: Bounds, at: Point, { pixel, handles, finger }: Hold): Grip | null {
  const shown = shownBox(box, pixel);
  const { left, top, right, bottom } = shown;
  const reach = (finger ? REACH_PX.finger : REACH_PX.pencil) * pixel;
  const far = (to: Point) => Math.hypot(at.x - to.x, at.y - to.y);
  if (handles) {
    if (far(turnHandle(shown, pixel)) <= reach) return { kind: "turn" };
    const cornerReach = Math.min(reach, MOST_REACH * Math.hypot(right - left, bottom - top));
    const index = cornersOf(shown).findIndex(({ corner }) => far(corner) <= cornerReach);
    const corner = cornersOf(box)[index];
    if (corner !== undefined) return { kind: "scale", ...corner };
  }
  const inside = at.x > left && at.x < right && at.y > top && at.y < bottom;
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
