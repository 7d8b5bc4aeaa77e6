import type { InkPoint, Nib } from "../ink";
import { NIB_LOOKS } from "../ink";
import { traceSide } from "./draw-marks";
import { drawSign, SIGN_WORDS, type SignKind } from "./draw-sign";
import { drawStroke } from "./draw-stroke";
import { PALETTE, sideColour } from "./palette";
import { traceLine } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/** A sample that takes `width` pixels from (0, 0), its middle on y = 0, and what it stands for. */
interface Entry {
  readonly words: string;
  readonly width: number;
  readonly draw: (surface: Surface) => void;
}

const WORDS: Face = { size: 15, weight: 400 };
const BETWEEN = 26;
const LINE = 30;

const ENTRIES: readonly Entry[] = [
  side("left", "left"),
  side("right", "right"),
  side(null, "head, neck, load"),
  sign("shows"),
  sign("may-show"),
  sign("tidy"),
  sign("on-purpose"),
  dashed("hips' height", [1.5, 3.5], PALETTE.faintText),
  dashed("measured from here", [6, 4], PALETTE.raspberry),
  band("expected span"),
  nib("fine", "fine pencil"),
  nib("broad", "broad pencil"),
  nib("under", "under-drawing"),
];

/**
 * Draws the legend in as many lines as it takes and says where it ends.
 *
 * Units:   page pixels; `y` is the middle of the first line
 */
export function drawLegend(
  surface: Surface | null,
  area: { readonly left: number; readonly width: number; readonly y: number },
  measure: MeasureText,
): number {
  let { left: x, y } = area;
  for (const entry of ENTRIES) {
    const words = measure(entry.words, WORDS);
    const width = entry.width + 8 + words;
    if (x > area.left && x + width > area.left + area.width) {
      x = area.left;
      y += LINE;
    }
    if (surface !== null) drawEntry(surface, entry, x, y);
    x += width + BETWEEN;
  }
  return y + LINE / 2;
}

function drawEntry(surface: Surface, entry: Entry, x: number, y: number): void {
  surface.save();
  surface.translate(x, y);
  entry.draw(surface);
  surface.restore();
  drawText(surface, {
    text: entry.words,
    x: x + entry.width + 8,
    y: y + 5,
    face: WORDS,
    colour: PALETTE.text,
  });
}

function side(which: "left" | "right" | null, words: string): Entry {
  return {
    words,
    width: 12,
    draw: (surface) => {
      traceSide(surface, which, { x: 6, y: 0 }, 5.5);
      surface.fillStyle = sideColour(which);
      surface.fill();
    },
  };
}

function sign(kind: SignKind): Entry {
  const draw = (surface: Surface) => drawSign(surface, kind, { x: 8, y: 0 }, 8);
  return { words: SIGN_WORDS[kind], width: 16, draw };
}

function dashed(words: string, dash: readonly number[], colour: string): Entry {
  return {
    words,
    width: 34,
    draw: (surface) => {
      surface.setLineDash([...dash]);
      surface.strokeStyle = colour;
      surface.lineWidth = 1.5;
      traceLine(surface, [
        { x: 0, y: 0 },
        { x: 34, y: 0 },
      ]);
      surface.stroke();
    },
  };
}

function band(words: string): Entry {
  return {
    words,
    width: 34,
    draw: (surface) => {
      surface.setLineDash([]);
      surface.strokeStyle = PALETTE.band;
      surface.lineWidth = 12;
      traceLine(surface, [
        { x: 0, y: 0 },
        { x: 34, y: 0 },
      ]);
      surface.stroke();
    },
  };
}

const SAMPLE_SCALE = 0.5; // page pixels a panel unit, about that of a strip of few panels

function nib(which: Nib, words: string): Entry {
  return {
    words,
    width: 44,
    draw: (surface) => {
      surface.scale(SAMPLE_SCALE, SAMPLE_SCALE);
      drawStroke(surface, {
        nib: which,
        colour: which === "under" ? "blue" : "graphite",
        width: NIB_LOOKS[which].width,
        points: wave(),
      });
    },
  };
}

/** A pencil's wave, heavier in its middle. Units: panel units. */
function wave(): InkPoint[] {
  return Array.from({ length: 23 }, (_, index): InkPoint => {
    const t = index / 22;
    return [t * 88, -7 * Math.sin(2 * Math.PI * t), 0.35 + 0.5 * Math.sin(Math.PI * t)];
  });
}
