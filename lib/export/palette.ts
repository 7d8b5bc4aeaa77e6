import type { Side } from "../body";
import type { Level } from "../gait";
import type { InkColour } from "../ink";

/**
 * The colours of the drawing, on screen, in print and in SVG alike. They are the paper's own: a dim
 * theme darkens the desk around it, never these. Colour never speaks alone: left and right, and the
 * levels of a remark, also differ in shape (see `shapes.ts`), so that a black-and-white copy reads.
 *
 * Text colours keep 4.5 : 1 on the paper and on the page, what is drawn to be read keeps 3 : 1.
 */
export const PALETTE = {
  page: "#ffffff",
  paper: "#fbf8f1",
  paperEdge: "#d8d0bf",
  ground: "#948a70",
  graphite: "#2f2d2a",
  text: "#2a2825",
  faintText: "#655e51",
  rule: "#cfc7b6",
  band: "#e9e2d2",
  bandEdge: "#948a70",
  softBlue: "#5f86b6",
  raspberry: "#a5155e",
  raspberryWash: "#f7dbe7",
  olive: "#755600",
  oliveWash: "#f1e7c4",
  left: "#0b757c",
  right: "#b04a17",
} as const;

/** The colour of one side: left teal, right burnt orange, neither graphite. */
export function sideColour(side: Side | null): string {
  if (side === null) return PALETTE.graphite;
  return side === "left" ? PALETTE.left : PALETTE.right;
}

const INK: Readonly<Record<InkColour, string>> = {
  graphite: PALETTE.graphite,
  blue: PALETTE.softBlue,
  raspberry: PALETTE.raspberry,
};

/** The colour that an ink dries to. */
export function inkColour(ink: InkColour): string {
  return INK[ink];
}

const LEVEL: Readonly<Record<Level, string>> = {
  shows: PALETTE.raspberry,
  "may-show": PALETTE.olive,
  tidy: PALETTE.faintText,
};

const WASH: Readonly<Record<Level, string>> = {
  shows: PALETTE.raspberryWash,
  "may-show": PALETTE.oliveWash,
  tidy: PALETTE.band,
};

/** What lies under words in the colour of a remark's level. */
export function levelWash(level: Level): string {
  return WASH[level];
}

/** The colour of a remark's level. */
export function levelColour(level: Level): string {
  return LEVEL[level];
}
