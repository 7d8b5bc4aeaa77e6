import { VIEWS } from "../geometry";
import { requirePositive } from "../require";
import { BitReader, BitWriter, fold, unfold } from "./bits";
import { readId, writeId } from "./id-codec";
import { readPoints, writePoints } from "./point-codec";
import { STEPS_A_UNIT, toSteps } from "./quantise";
import { INKS, NIBS, type Stroke } from "./stroke";
import { StrokeError } from "./stroke-error";

const VERSION = 1;
const WIDTH_BITS = 6; // Rice parameter: pencils are 2 to 12 units wide, so 32 to 192 steps
const Z_BITS = 8; // Rice parameter: a panel has some 150 strokes
const MAX_WIDTH = 4096; // panel units; a view is 720 × 1200
const MAX_Z = 2 ** 24;

/**
 * A whole stroke as bytes, the value that the document keeps: version, view, nib, colour, width, z and
 * panel in about 13 bytes, then the points. Reading it back gives `quantiseStroke` of it.
 *
 * Units:   panel units; kept to 1/16, pressure to 1/63
 * Errors:  RangeError for what is no stroke: no points or over 65,535, a number that is not finite, a
 *          width of 0 or less, a z that is not whole, a panel id that is not base64url
 */
export function packStroke(stroke: Stroke): Uint8Array<ArrayBuffer> {
  const { width, z } = stroke;
  requirePositive("a stroke", { width });
  if (!Number.isInteger(z) || Math.abs(z) > MAX_Z) {
    throw new RangeError(`a stroke needs a whole z within ±${MAX_Z}, got ${z}`);
  }
  const writer = new BitWriter();
  writer.bits(VERSION, 8);
  writer.bits(VIEWS.indexOf(stroke.view), 2);
  writer.bits(NIBS.indexOf(stroke.nib), 3);
  writer.bits(INKS.indexOf(stroke.colour), 3);
  writer.rice(Math.max(1, toSteps(Math.min(MAX_WIDTH, width))), WIDTH_BITS);
  writer.rice(fold(z), Z_BITS);
  writeId(writer, stroke.panel);
  writePoints(writer, stroke.points);
  return writer.done();
}

/**
 * A stroke from its bytes. Damaged bytes either are refused or read as some other whole stroke; they
 * never take longer or more room than their own length asks for.
 *
 * Errors:  StrokeError "truncated", "trailing", "newer-version" or "damaged"
 */
export function unpackStroke(bytes: Uint8Array): Stroke {
  const reader = new BitReader(bytes);
  const head = readHead(reader);
  const points = readPoints(reader);
  reader.end();
  return { ...head, points };
}

/** On which paper a packed stroke lies, its points left unread. Errors: StrokeError, as `unpackStroke` */
export function paperOf(bytes: Uint8Array): Pick<Stroke, "panel" | "view"> {
  const { panel, view } = readHead(new BitReader(bytes));
  return { panel, view };
}

function readHead(reader: BitReader): Omit<Stroke, "points"> {
  const version = reader.bits(8);
  if (version > VERSION) {
    throw new StrokeError("newer-version", `stroke version ${version}, this is ${VERSION}`);
  }
  if (version < VERSION) throw new StrokeError("damaged", "stroke version 0 never was");
  const view = oneOf(VIEWS, reader.bits(2), "view");
  const nib = oneOf(NIBS, reader.bits(3), "nib");
  const colour = oneOf(INKS, reader.bits(3), "colour");
  const widthSteps = reader.rice(WIDTH_BITS);
  const z = unfold(reader.rice(Z_BITS));
  if (widthSteps < 1 || widthSteps > MAX_WIDTH * STEPS_A_UNIT || Math.abs(z) > MAX_Z) {
    throw new StrokeError("damaged", `no stroke has width ${widthSteps}/16 at z ${z}`);
  }
  return { panel: readId(reader), view, nib, colour, width: widthSteps / STEPS_A_UNIT, z };
}

function oneOf<T>(values: readonly T[], index: number, what: string): T {
  const value = values[index];
  if (value === undefined) throw new StrokeError("damaged", `no ${what} has number ${index}`);
  return value;
}
