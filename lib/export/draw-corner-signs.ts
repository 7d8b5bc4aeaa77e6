import type { Panel } from "../sheet";
import type { CellDrawing } from "./draw-cell";
import { drawSign, type SignKind } from "./draw-sign";
import { levelColour, PALETTE } from "./palette";
import type { Box } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face } from "./typeface";

const SIGN_RADIUS = 11;
const SIGN_PITCH = 27; // units from one sign down to the next
const KEYS: Face = { size: 13, weight: 700 };
const KEYS_HEIGHT = 18;
const SIGN_LEVELS = ["shows", "may-show"] as const;

/** A group of signs in the corner, and the numbers to read on under it. */
interface Signs {
  readonly kinds: readonly { readonly kind: SignKind; readonly count: number }[];
  readonly keys: readonly number[];
  readonly colour: string;
}

/** The remarks still open, then what is kept. */
function signsOf({ remarks, kept }: Pick<CellDrawing, "remarks" | "kept">): readonly Signs[] {
  const kinds = SIGN_LEVELS.map((kind) => ({
    kind,
    count: remarks.filter(({ remark }) => remark.level === kind).length,
  })).filter(({ count }) => count > 0);
  const open = {
    kinds,
    keys: remarks.map(({ key }) => key),
    colour: levelColour(kinds.at(-1)?.kind ?? "tidy"),
  };
  const meant = {
    kinds: [{ kind: "on-purpose" as const, count: 1 }],
    keys: kept.map(({ key }) => key),
    colour: PALETTE.text,
  };
  return [open, meant].filter(({ keys }) => keys.length > 0);
}

/**
 * The upper corner of the side view where the signs and their numbers stand: the right one, or the left
 * where less is drawn. Units: panel units.
 */
export function signCorner(drawing: CellDrawing): SignCorner {
  const window = drawing.strip.windows.side;
  const pixel = 1 / drawing.strip.scale;
  const groups = signsOf(drawing);
  const signs = groups.reduce((sum, { kinds }) => sum + kinds.length, 0);
  const keys = groups.map((group) => drawing.measure(keysInWords(group.keys), KEYS));
  const width = Math.max(40, 12 + Math.max(0, ...keys)) * pixel;
  const height = (10 + signs * SIGN_PITCH + groups.length * KEYS_HEIGHT) * pixel;
  const left = { x: window.x, y: window.y, width, height };
  const right = { ...left, x: window.x + window.width - width };
  const { ink } = drawing.cell.panel;
  return inkWithin(left, ink.side) < inkWithin(right, ink.side)
    ? { at: "left", box: left }
    : { at: "right", box: right };
}

interface SignCorner {
  readonly at: "left" | "right";
  readonly box: Box;
}

/** How many points of ink lie within a box. Units: panel units. */
function inkWithin({ x, y, width, height }: Box, strokes: Panel["ink"]["side"]): number {
  return strokes.reduce((sum, { points }) => {
    const within = points.filter(
      ([px, py]) => px >= x && px <= x + width && py >= y && py <= y + height,
    );
    return sum + within.length;
  }, 0);
}

/**
 * The signs of the panel's remarks, one under the other so that they keep to the corner; how many
 * there are stands in each that stands for several, the numbers to read on under the last.
 */
export function drawCornerSigns(surface: Surface, drawing: CellDrawing): void {
  const { side } = drawing.cell.views;
  const corner = signCorner(drawing).at;
  const inset = SIGN_RADIUS + 8;
  const x = corner === "right" ? side.x + side.width - inset : side.x + inset;
  const edge = corner === "right" ? side.x + side.width - 8 : side.x + 8;
  let y = side.y + SIGN_RADIUS + 9;
  for (const { kinds, keys, colour } of signsOf(drawing)) {
    for (const { kind, count } of kinds) {
      drawSign(surface, kind, { x, y }, SIGN_RADIUS, count > 1 ? count : undefined);
      y += SIGN_PITCH;
    }
    const text = keysInWords(keys);
    const wide = drawing.measure(text, KEYS) > 2 * SIGN_RADIUS;
    drawText(surface, {
      text,
      x: wide ? edge : x,
      y,
      face: KEYS,
      colour,
      align: wide ? corner : "center",
    });
    y += KEYS_HEIGHT;
  }
}

/** "3", "3–5", "3, 7": what follows on is told by its ends. */
function keysInWords(keys: readonly number[]): string {
  const runs: { from: number; to: number }[] = [];
  for (const key of keys) {
    const last = runs.at(-1);
    if (last?.to === key - 1) last.to = key;
    else runs.push({ from: key, to: key });
  }
  return runs.map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`)).join(", ");
}

/** Where the corner's signs end. Units: page units. */
export function cornerFoot(drawing: CellDrawing): number {
  return drawing.cell.views.side.y + signCorner(drawing).box.height * drawing.strip.scale;
}
