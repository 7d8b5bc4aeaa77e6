import type { Side } from "../body";
import type { FootState } from "../gait";
import { type InkPoint, NIB_LOOKS, type Nib } from "../ink";
import { drawFootBar } from "./draw-footfalls";
import { fillBandArea } from "./draw-hip-chart";
import { traceSide } from "./draw-marks";
import { drawSign, SIGN_WORDS, type SignKind } from "./draw-sign";
import { drawStroke } from "./draw-stroke";
import type { LegendId } from "./legend-of";
import { PALETTE, sideColour } from "./palette";
import { traceBox, traceLine } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

/** A sample that takes `width` units from (0, 0), its middle on y = 0, and what it stands for. */
interface Entry {
  readonly id: LegendId;
  readonly words: string;
  readonly width: number;
  readonly draw: (surface: Surface) => void;
}

const WORDS: Face = { size: 15, weight: 400 };
const BETWEEN = 24;
const LINE = 26;

const ENTRIES: readonly Entry[] = [
  side("marks", "left", "left"),
  side("marks", "right", "right"),
  side("marks", null, "head, neck, load"),
  limb("left"),
  limb("right"),
  sign("shows"),
  sign("may-show"),
  sign("tidy"),
  sign("on-purpose"),
  dashed("hips", "hips' height", [1.5, 3.5], PALETTE.faintText),
  dashed("measured", "measured from here", [6, 4], PALETTE.raspberry),
  band("expected span"),
  foot("heel", "heel", "foot on its heel"),
  foot("flat", "flat", "flat"),
  foot("ball", "ball", "on its ball"),
  foot("toe", "toe", "on its toe"),
  foot("untold", null, "cannot be told"),
  nib("fine", "fine pencil"),
  nib("broad", "broad pencil"),
  nib("under", "under-drawing"),
];

/**
 * Draws the legend of what a sheet shows, in as many lines as it takes, and says where it ends.
 *
 * Units:   page units; `y` is the middle of the first line
 */
export function drawLegend(
  surface: Surface | null,
  area: { readonly left: number; readonly width: number; readonly y: number },
  shown: ReadonlySet<LegendId>,
  measure: MeasureText,
): number {
  let { left: x, y } = area;
  for (const entry of ENTRIES.filter(({ id }) => shown.has(id))) {
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

function side(id: LegendId, which: Side | null, words: string): Entry {
  return {
    id,
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
  return { id: kind, words: SIGN_WORDS[kind], width: 16, draw };
}

function dashed(id: LegendId, words: string, dash: readonly number[], colour: string): Entry {
  return {
    id,
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

function limb(which: Side): Entry {
  return {
    id: "marks",
    words: `${which} limbs`,
    width: 34,
    draw: (surface) => {
      surface.setLineDash(which === "right" ? [7, 3] : []);
      surface.strokeStyle = sideColour(which);
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
    id: "band",
    words,
    width: 34,
    draw: (surface) => {
      surface.setLineDash([]);
      traceBox(surface, { x: 0, y: -6, width: 34, height: 12 });
      fillBandArea(surface);
    },
  };
}

function foot(id: LegendId, state: FootState | null, words: string): Entry {
  const lane = { x: 0, y: -10, width: 30, height: 17 };
  return {
    id,
    words,
    width: 30,
    draw: (surface) => {
      surface.setLineDash([]);
      drawFootBar(surface, state, "left", lane);
      surface.strokeStyle = sideColour("left");
      surface.lineWidth = 1;
      traceLine(surface, [
        { x: 0, y: lane.y + lane.height },
        { x: lane.width, y: lane.y + lane.height },
      ]);
      surface.stroke();
    },
  };
}

const SAMPLE_SCALE = 0.5; // page pixels a panel unit, about that of a strip of few panels

function nib(which: Nib, words: string): Entry {
  return {
    id: which,
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
