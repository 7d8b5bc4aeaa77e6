import { inflateSync } from "node:zlib";

/** A picture with four bytes a pixel: red, green, blue, alpha, from the top left. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

const SIGNATURE = "89504e470d0a1a0a";

/**
 * Reads a PNG of eight bits a channel with alpha, not interlaced, by the PNG specification, third
 * edition: chunks (5), filters (9). For tests, so that what was written is read by other code.
 */
export function readPng(file: Buffer): Picture {
  if (file.toString("hex", 0, 8) !== SIGNATURE) throw new Error("not a PNG");
  const data: Buffer[] = [];
  let [width, height, kind] = [0, 0, ""];
  for (let at = 8; at < file.length; ) {
    const length = file.readUInt32BE(at);
    const type = file.toString("latin1", at + 4, at + 8);
    const body = file.subarray(at + 8, at + 8 + length);
    if (type === "IHDR") {
      [width, height] = [body.readUInt32BE(0), body.readUInt32BE(4)];
      kind = body.toString("hex", 8, 13);
    }
    if (type === "IDAT") data.push(body);
    at += 12 + length;
  }
  if (kind !== "0806000000") throw new Error(`a PNG of another kind: ${kind}`);
  return { width, height, pixels: unfilter(inflateSync(Buffer.concat(data)), width, height) };
}

function unfilter(raw: Buffer, width: number, height: number): Uint8Array {
  const line = width * 4;
  const pixels = new Uint8Array(line * height);
  for (let row = 0; row < height; row += 1) {
    const filter = raw[row * (line + 1)] ?? 0;
    for (let at = 0; at < line; at += 1) {
      const here = row * line + at;
      const left = at < 4 ? 0 : (pixels[here - 4] ?? 0);
      const up = row === 0 ? 0 : (pixels[here - line] ?? 0);
      const upLeft = row === 0 || at < 4 ? 0 : (pixels[here - line - 4] ?? 0);
      const guess = [0, left, up, (left + up) >> 1, paeth(left, up, upLeft)][filter] ?? 0;
      pixels[here] = (raw[row * (line + 1) + 1 + at] ?? 0) + guess;
    }
  }
  return pixels;
}

function paeth(left: number, up: number, upLeft: number): number {
  const [byLeft, byUp] = [Math.abs(up - upLeft), Math.abs(left - upLeft)];
  const byBoth = Math.abs(left + up - 2 * upLeft);
  if (byLeft <= byUp && byLeft <= byBoth) return left;
  return byUp <= byBoth ? up : upLeft;
}

/** How many pixels within a box are darker than a grey of 100, of 255. Units: pixels. */
export function darkPixels(
  { width, pixels }: Picture,
  box: { x: number; y: number; width: number; height: number },
): number {
  let dark = 0;
  for (let y = Math.round(box.y); y < box.y + box.height; y += 1) {
    for (let x = Math.round(box.x); x < box.x + box.width; x += 1) {
      const at = (y * width + x) * 4;
      const [red = 255, green = 255, blue = 255] = pixels.subarray(at, at + 3);
      if (0.2126 * red + 0.7152 * green + 0.0722 * blue < 100) dark += 1;
    }
  }
  return dark;
}
