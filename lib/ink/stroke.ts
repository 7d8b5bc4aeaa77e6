import type { View } from "../geometry";

/** What the hand draws with: two pencils, and a soft one for the drawing under the drawing. */
export const NIBS = ["fine", "broad", "under"] as const;
export type Nib = (typeof NIBS)[number];

/** The inks a sheet knows. `raspberry` is correction ink and belongs to critique. */
export const INKS = ["graphite", "blue", "raspberry"] as const;
export type InkColour = (typeof INKS)[number];

/** x and y in panel units, pressure 0..1. */
export type InkPoint = readonly [x: number, y: number, pressure: number];

/** One stroke as drawn: written once, when the pen lifts, and never changed point by point. */
export interface Stroke {
  readonly panel: string;
  readonly view: View;
  readonly nib: Nib;
  readonly colour: InkColour;
  /** Full width at pressure 1, in panel units. */
  readonly width: number;
  /** Higher lies over lower; ties are settled by the stroke's id. */
  readonly z: number;
  readonly points: readonly InkPoint[];
}
