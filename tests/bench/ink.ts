import * as Y from "yjs";
import { decodeLive, encodeLive, type InkPoint, packStroke, unpackStroke } from "../../lib/ink";
import {
  defaultBrief,
  drawStroke,
  layOut,
  newStrokeId,
  openSheetView,
  writeSheet,
} from "../../lib/sheet";
import { type Dice, dice } from "../support/dice";
import { ids } from "../support/peers";

const PANELS = 48;
const STROKES = 150;
const POINTS = 40;

/**
 * Ink's sizes and times: 48 panels × 150 strokes × 40 points, drawn by two people through the verb, as a
 * pen leaves them: curves at 120 Hz whose direction and speed drift, with a digitiser's jitter.
 */
export async function benchInk(): Promise<Array<{ what: string; figure: string }>> {
  const throws = dice(20_26);
  const newId = ids();
  const sheet = layOut(defaultBrief, newId);
  const [first] = sheet.panels;
  if (first === undefined) throw new RangeError("the brief laid out no panel");
  const panels = Array.from({ length: PANELS }, (_, i) => ({
    ...first,
    id: newId(),
    frame: 1 + i,
  }));
  const doc = new Y.Doc();
  writeSheet(doc, { ...sheet, panels });
  const other = new Y.Doc();
  Y.applyUpdate(other, Y.encodeStateAsUpdate(doc));
  const empty = Y.encodeStateAsUpdate(doc).length;
  const curves: InkPoint[][] = [];
  let packed = 0;
  const started = performance.now();
  for (const panel of panels) {
    for (let i = 0; i < STROKES; i++) {
      const points = penCurve(throws);
      const view = i % 3 === 0 ? "front" : "side";
      const stroke = {
        panel: panel.id,
        view,
        nib: "fine",
        colour: "graphite",
        width: 4,
        z: i,
        points,
      } as const;
      curves.push(points);
      packed += packStroke(stroke).length;
      drawStroke(i % 2 === 0 ? doc : other, newStrokeId(throws.bytes), stroke);
    }
  }
  const drawn = performance.now() - started;
  Y.applyUpdate(doc, Y.encodeStateAsUpdate(other));
  const bytes = Y.encodeStateAsUpdate(doc);
  const points = PANELS * STROKES * POINTS;
  return [
    { what: "document, bytes a point", figure: ((bytes.length - empty) / points).toFixed(3) },
    { what: "packed stroke, bytes a point", figure: (packed / points).toFixed(3) },
    { what: "document", figure: `${(bytes.length / 1e6).toFixed(3)} MB` },
    { what: "live message, bytes for one new point", figure: liveBytes(curves).toFixed(2) },
    {
      what: "draw a stroke, packed twice",
      figure: `${((1000 * drawn) / curves.length).toFixed(1)} µs`,
    },
    { what: "unpack a stroke", figure: `${unpackMicroseconds(curves).toFixed(1)} µs` },
    { what: "open a view of it", figure: `${viewMilliseconds(bytes).toFixed(0)} ms` },
  ];
}

/** A stroke in a view: the pen's direction and speed drift, and its place trembles by a fifth of a unit. */
function penCurve(throws: Dice): InkPoint[] {
  const tremble = () => (throws.below(1000) / 1000 - 0.5) * 0.4;
  let x = 60 + throws.below(600);
  let y = 60 + throws.below(1080);
  let heading = (throws.below(6283) / 1000) * 1;
  let speed = 2 + throws.below(60) / 10; // units a sample
  let pressure = 0.3 + throws.below(40) / 100;
  return Array.from({ length: POINTS }, () => {
    heading += tremble() * 0.6;
    speed = Math.min(12, Math.max(0.5, speed + tremble() * 2));
    pressure = Math.min(1, Math.max(0.05, pressure + tremble() * 0.15));
    x += speed * Math.cos(heading);
    y += speed * Math.sin(heading);
    return [x + tremble(), y + tremble(), pressure] as const;
  });
}

function liveBytes(curves: readonly InkPoint[][]): number {
  let bytes = 0;
  let count = 0;
  curves.slice(0, 200).forEach((points, stroke) => {
    for (const point of points) {
      const message = encodeLive({ kind: "more", stroke, points: [point] });
      if (decodeLive(message).kind !== "more")
        throw new Error("a live message came back as another");
      bytes += message.length;
      count++;
    }
  });
  return bytes / count;
}

function unpackMicroseconds(curves: readonly InkPoint[][]): number {
  const packed = curves.map((points) =>
    packStroke({
      panel: "panelAAA",
      view: "side",
      nib: "fine",
      colour: "blue",
      width: 4,
      z: 1,
      points,
    }),
  );
  const started = performance.now();
  for (const bytes of packed) unpackStroke(bytes);
  return (1000 * (performance.now() - started)) / packed.length;
}

function viewMilliseconds(bytes: Uint8Array): number {
  const doc = new Y.Doc();
  Y.applyUpdate(doc, bytes);
  const started = performance.now();
  const view = openSheetView(doc);
  const { panels } = view.getSnapshot();
  const spent = performance.now() - started;
  if (panels.length !== PANELS) throw new Error(`the view has ${panels.length} panels`);
  view.close();
  return spent;
}
