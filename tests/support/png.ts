import { crc32, deflateSync } from "node:zlib";

/** What a test's picture is made of, by pixel: red, green, blue and how solid it is, 0 to 255. */
export type Pixel = (x: number, y: number) => readonly [number, number, number, number];

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** A whole PNG file, eight bits a channel. Source: PNG (W3C, third edition) §5, §9, §11.2 */
export function pngOf(width: number, height: number, pixel: Pixel): Buffer<ArrayBuffer> {
  const row = 1 + 4 * width;
  const raw = Buffer.alloc(row * height); // each row begins with its filter: 0, none
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) raw.set(pixel(x, y), y * row + 1 + 4 * x);
  }
  return Buffer.concat([
    SIGNATURE,
    chunk("IHDR", headerOf(width, height)),
    chunk("IDAT", deflateSync(raw)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

/** Its upper half in one colour and its lower half in another, so that its way up can be seen. */
export function halvesPng(
  width: number,
  height: number,
  [upper, lower] = HALVES,
): Buffer<ArrayBuffer> {
  return pngOf(width, height, (_x, y) => (y < height / 2 ? upper : lower));
}

const HALVES = [
  [200, 30, 30, 255],
  [30, 60, 200, 255],
] as const;

function headerOf(width: number, height: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 6], 8); // eight bits, truecolour with alpha
  return header;
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, "latin1"), data]);
  const whole = Buffer.alloc(body.length + 8);
  whole.writeUInt32BE(data.length, 0);
  whole.set(body, 4);
  whole.writeUInt32BE(crc32(body), body.length + 4);
  return whole;
}
