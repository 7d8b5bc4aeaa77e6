import { inkColour } from "../../lib/export";
import type { InkColour } from "../../lib/ink";

/**
 * The tooth of the paper: a pencil leaves little in its hollows. It stands still on the paper, in
 * device pixels, so a stroke looks the same under the pen and after it has been stored. Only the
 * screen has it; the ink itself is an outline and a colour.
 */
const TILE_PX = 128;
const HOLLOW_SHARE = 0.42; // of the height of its hills
const LEAST_INK = 0.4; // what a hollow still takes, of the full strength
const FINEST_SCALE = 0.5; // device pixels a panel unit: on a smaller paper grain would only be dirt

const tiles = new Map<InkColour, CanvasPattern>();

/** What a stroke is filled with at this scale: its colour, grained where there is room for grain. */
export function grained(
  context: CanvasRenderingContext2D,
  colour: InkColour,
  scale: number,
): CanvasPattern | string {
  const plain = inkColour(colour);
  if (scale < FINEST_SCALE) return plain;
  const tile = tiles.get(colour) ?? makeTile(context, plain);
  if (tile === null) return plain;
  tiles.set(colour, tile);
  tile.setTransform(new DOMMatrix([1 / scale, 0, 0, 1 / scale, 0, 0]));
  return tile;
}

function makeTile(context: CanvasRenderingContext2D, colour: string): CanvasPattern | null {
  const canvas = document.createElement("canvas");
  canvas.width = TILE_PX;
  canvas.height = TILE_PX;
  const surface = canvas.getContext("2d");
  if (surface === null) return null;
  surface.fillStyle = colour;
  surface.fillRect(0, 0, TILE_PX, TILE_PX);
  const pixels = surface.getImageData(0, 0, TILE_PX, TILE_PX);
  tooth().forEach((strength, index) => {
    pixels.data[4 * index + 3] = Math.round(255 * strength);
  });
  surface.putImageData(pixels, 0, 0);
  return context.createPattern(canvas, "repeat");
}

/** Shares of ink, one a pixel, that join at the tile's edges. */
function tooth(): readonly number[] {
  const rough = noise();
  // Hollows are about two pixels wide: each pixel leans on its neighbours.
  return rough.map((own, index) => {
    const x = index % TILE_PX;
    const y = Math.floor(index / TILE_PX);
    const beside = rough[y * TILE_PX + ((x + 1) % TILE_PX)] ?? own;
    const below = rough[((y + 1) % TILE_PX) * TILE_PX + x] ?? own;
    const height = (own + beside + below) / 3;
    return height > HOLLOW_SHARE ? 1 : LEAST_INK + (1 - LEAST_INK) * (height / HOLLOW_SHARE);
  });
}

/** The same paper every time. Source: Lehmer's generator, modulus 2³¹ − 1, multiplier 48271. */
function noise(): readonly number[] {
  let state = 7;
  return Array.from({ length: TILE_PX * TILE_PX }, () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  });
}
