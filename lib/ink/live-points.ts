import { VIEWS } from "../geometry";
import { fold, unfold } from "./bits";
import { ByteReader, ByteWriter } from "./bytes";
import { isId } from "./id-codec";
import { MAX_STEP, PRESSURE_STEPS, STEPS_A_UNIT, toPressureSteps, toSteps } from "./quantise";
import { INKS, type InkPoint, NIBS, type Stroke } from "./stroke";
import { StrokeError } from "./stroke-error";

/** Points one message may bring: a frame's worth of a 1,000 Hz pen many times over. */
const MAX_LIVE_POINTS = 4096;
const KINDS = ["start", "more", "end", "cancel"] as const;

/**
 * What is told of a stroke while it is drawn. `stroke` is the sender's own count of strokes, so that a
 * message that went missing costs a gap in one line and nothing else: each brings its first point
 * whole. `end` names the stroke that the document now holds.
 */
export type LiveMessage =
  | ({ readonly kind: "start"; readonly stroke: number } & Omit<Stroke, "z">)
  | { readonly kind: "more"; readonly stroke: number; readonly points: readonly InkPoint[] }
  | { readonly kind: "end"; readonly stroke: number; readonly strokeId: string }
  | { readonly kind: "cancel"; readonly stroke: number };

/**
 * A live message as bytes: about 9 for one new point of a stroke.
 *
 * Units:   panel units, kept to 1/16; pressure to 1/63
 * Errors:  RangeError for what cannot be sent: a count beyond 2^24, an id that is none, no number
 */
export function encodeLive(message: LiveMessage): Uint8Array<ArrayBuffer> {
  const { stroke } = message;
  if (!Number.isInteger(stroke) || stroke < 0 || stroke > 2 ** 24) {
    throw new RangeError(`a live stroke needs a whole number 0..2^24, got ${stroke}`);
  }
  const writer = new ByteWriter();
  writer.uint(stroke * KINDS.length + KINDS.indexOf(message.kind));
  if (message.kind === "start") {
    writer.byte(VIEWS.indexOf(message.view));
    writer.byte(NIBS.indexOf(message.nib));
    writer.byte(INKS.indexOf(message.colour));
    writer.uint(Math.max(1, toSteps(message.width)));
    writeText(writer, message.panel);
  }
  if (message.kind === "end") writeText(writer, message.strokeId);
  if (message.kind === "start" || message.kind === "more") writePoints(writer, message.points);
  return writer.done();
}

/**
 * A live message from its bytes. What comes from others is hearsay: on an error, show nothing.
 *
 * Errors:  StrokeError "truncated", "trailing" or "damaged"
 */
export function decodeLive(bytes: Uint8Array): LiveMessage {
  const reader = new ByteReader(bytes);
  const numbered = reader.uint();
  const stroke = Math.floor(numbered / KINDS.length);
  const kind = KINDS[numbered % KINDS.length] ?? "cancel";
  const message = readRest(reader, kind, stroke);
  reader.end();
  return message;
}

function readRest(reader: ByteReader, kind: LiveMessage["kind"], stroke: number): LiveMessage {
  if (kind === "cancel") return { kind, stroke };
  if (kind === "end") return { kind, stroke, strokeId: readText(reader) };
  if (kind === "more") return { kind, stroke, points: readPoints(reader) };
  const view = oneOf(VIEWS, reader.byte());
  const nib = oneOf(NIBS, reader.byte());
  const colour = oneOf(INKS, reader.byte());
  const width = reader.uint() / STEPS_A_UNIT;
  if (width <= 0 || width > MAX_STEP) throw new StrokeError("damaged", `width ${width}`);
  const panel = readText(reader);
  return { kind, stroke, view, nib, colour, width, panel, points: readPoints(reader) };
}

function writePoints(writer: ByteWriter, points: readonly InkPoint[]): void {
  let lastX = 0;
  let lastY = 0;
  for (const [unitsX, unitsY, pressure] of points) {
    const x = toSteps(unitsX);
    const y = toSteps(unitsY);
    writer.uint(fold(x - lastX));
    writer.uint(fold(y - lastY));
    writer.byte(toPressureSteps(pressure));
    lastX = x;
    lastY = y;
  }
}

/** As many points as are left. */
function readPoints(reader: ByteReader): InkPoint[] {
  const points: InkPoint[] = [];
  let x = 0;
  let y = 0;
  while (reader.left > 0) {
    x += unfold(reader.uint());
    y += unfold(reader.uint());
    const pressure = reader.byte();
    const beyond = Math.abs(x) > MAX_STEP || Math.abs(y) > MAX_STEP || pressure > PRESSURE_STEPS;
    if (beyond || points.length >= MAX_LIVE_POINTS) {
      throw new StrokeError("damaged", "a live point lies where no pen can be");
    }
    points.push([x / STEPS_A_UNIT, y / STEPS_A_UNIT, pressure / PRESSURE_STEPS]);
  }
  return points;
}

function writeText(writer: ByteWriter, id: string): void {
  if (!isId(id)) throw new RangeError(`a live stroke needs base64url ids, got "${id}"`);
  writer.byte(id.length);
  for (const character of id) writer.byte(character.charCodeAt(0));
}

function readText(reader: ByteReader): string {
  const length = reader.byte();
  let text = "";
  for (let i = 0; i < length; i++) text += String.fromCharCode(reader.byte());
  if (!isId(text)) throw new StrokeError("damaged", "a live stroke names no id");
  return text;
}

function oneOf<T>(values: readonly T[], index: number): T {
  const value = values[index];
  if (value === undefined) throw new StrokeError("damaged", `nothing has number ${index}`);
  return value;
}
