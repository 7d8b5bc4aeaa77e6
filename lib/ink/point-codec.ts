import { type BitReader, type BitWriter, fold, unfold } from "./bits";
import { MAX_STEP, PRESSURE_STEPS, STEPS_A_UNIT, toPressureSteps, toSteps } from "./quantise";
import type { InkPoint } from "./stroke";
import { StrokeError } from "./stroke-error";

/** Points a stroke may have: four and a half minutes of a 240 Hz pen without lifting it. */
export const MAX_POINTS = 65_535;

const COUNT_BITS = 6; // Rice parameter of the number of points: strokes have about 40
const FIRST_BITS = 13; // Rice parameter of the first point: a view is 2^13.5 by 2^14.2 steps
const LEAST_BITS_A_POINT = 3; // one bit each for x, y and pressure

/**
 * How large the numbers of one channel have been of late, times 16: an average that forgets by an
 * eighth a point. The Rice parameter follows from it, so slow and fast stretches of a stroke both
 * come cheap without telling the reader anything.
 */
class Channel {
  #mean: number;

  constructor(expected: number) {
    this.#mean = expected * 16;
  }

  get k(): number {
    let k = 0;
    while (24 << k < this.#mean && k < 20) k++;
    return k;
  }

  saw(folded: number): void {
    this.#mean += (folded * 16 - this.#mean) >> 3;
  }
}

/** Where the pen was and how it moved: the next point is guessed as one more step like the last. */
const channels = () => ({ x: new Channel(20), y: new Channel(20), pressure: new Channel(2) });

/**
 * Writes points as second differences in adaptive Rice bits, about 1.8 bytes a point.
 *
 * Units:   panel units, pressure 0..1
 * Errors:  RangeError unless there are 1 to 65,535 points, all finite
 * Source:  R. F. Rice (1979), Some practical universal noiseless coding techniques, JPL 79-22
 */
export function writePoints(writer: BitWriter, points: readonly InkPoint[]): void {
  if (points.length < 1 || points.length > MAX_POINTS) {
    throw new RangeError(`a stroke needs 1 to ${MAX_POINTS} points, got ${points.length}`);
  }
  writer.rice(points.length, COUNT_BITS);
  const of = channels();
  const write = (channel: Channel, difference: number) => {
    const folded = fold(difference);
    writer.rice(folded, channel.k);
    channel.saw(folded);
  };
  let last: { x: number; y: number; pressure: number; dx: number; dy: number } | null = null;
  for (const [unitsX, unitsY, share] of points) {
    const x = toSteps(unitsX);
    const y = toSteps(unitsY);
    const pressure = toPressureSteps(share);
    if (last === null) {
      writer.rice(fold(x), FIRST_BITS);
      writer.rice(fold(y), FIRST_BITS);
      writer.bits(pressure, 6);
      last = { x, y, pressure, dx: 0, dy: 0 };
    } else {
      const dx: number = x - last.x;
      const dy: number = y - last.y;
      write(of.x, dx - last.dx);
      write(of.y, dy - last.dy);
      write(of.pressure, pressure - last.pressure);
      last = { x, y, pressure, dx, dy };
    }
  }
}

/**
 * Reads what `writePoints` wrote. Nothing is set aside before the bytes that are there could hold it.
 *
 * Errors:  StrokeError "truncated", or "damaged" for a count or a point that cannot be
 */
export function readPoints(reader: BitReader): InkPoint[] {
  const count = reader.rice(COUNT_BITS);
  if (count < 1 || count > MAX_POINTS || (count - 1) * LEAST_BITS_A_POINT > reader.left) {
    throw new StrokeError("damaged", `${count} points cannot be in ${reader.left} bits`);
  }
  const of = channels();
  const read = (channel: Channel) => {
    const folded = reader.rice(channel.k);
    channel.saw(folded);
    return unfold(folded);
  };
  let x = unfold(reader.rice(FIRST_BITS));
  let y = unfold(reader.rice(FIRST_BITS));
  let pressure = reader.bits(6);
  let dx = 0;
  let dy = 0;
  const points = [pointOf(x, y, pressure)];
  while (points.length < count) {
    dx += read(of.x);
    dy += read(of.y);
    pressure += read(of.pressure);
    x += dx;
    y += dy;
    points.push(pointOf(x, y, pressure));
  }
  return points;
}

function pointOf(x: number, y: number, pressure: number): InkPoint {
  const beyond = Math.abs(x) > MAX_STEP || Math.abs(y) > MAX_STEP;
  if (beyond || pressure < 0 || pressure > PRESSURE_STEPS) {
    throw new StrokeError("damaged", "a point lies where no pen can be");
  }
  return [x / STEPS_A_UNIT, y / STEPS_A_UNIT, pressure / PRESSURE_STEPS];
}
