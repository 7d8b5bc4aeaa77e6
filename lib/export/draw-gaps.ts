import type { GapCell } from "../gait";
import { levelColour, levelWash, PALETTE } from "./palette";
import { rulerX } from "./ruler";
import { type Box, traceBox } from "./shapes";
import type { StripRow } from "./strip-layout";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face, MeasureText } from "./typeface";

interface Chip extends GapCell {
  readonly left: number;
  readonly right: number;
}

const FIGURE: Face = { size: 15, weight: 600 };
const BETWEEN = 4; // px between two chips

/**
 * Draws the frames between neighbouring panels, a chip a gap, on the ruler's own scale. The last
 * chip of a row leads to the first panel of the next. A gap that a remark speaks of is ruled round,
 * bold, and told beside what was expected.
 *
 * Units:   frames; page pixels
 */
export function drawGaps(
  surface: Surface,
  row: StripRow,
  gaps: readonly GapCell[],
  measure: MeasureText,
): void {
  for (const chip of chipsOf(row, gaps)) drawChip(surface, chip, row.gaps, measure);
}

function chipsOf({ cells, ruler, next, gaps: box }: StripRow, gaps: readonly GapCell[]): Chip[] {
  const places = new Map(cells.map(({ panel }) => [panel.id, rulerX(ruler, panel.frame)]));
  if (next !== null) places.set(next.id, box.x + box.width);
  return gaps.flatMap((gap) => {
    const left = places.get(gap.from);
    const right = places.get(gap.to);
    return left === undefined || right === undefined ? [] : [{ ...gap, left, right }];
  });
}

function drawChip(surface: Surface, gap: Chip, box: Box, measure: MeasureText): void {
  const { left, right, level } = gap;
  const chip = { ...box, x: left + BETWEEN / 2, width: right - left - BETWEEN };
  if (chip.width <= 0) return; // two panels on one frame: the ruler shows it
  const face: Face = { ...FIGURE, weight: level === null ? 600 : 700 };
  surface.save();
  surface.setLineDash([]);
  traceBox(surface, chip, Math.min(3, chip.width / 2));
  surface.fillStyle = level === null ? PALETTE.band : levelWash(level);
  surface.fill();
  surface.strokeStyle = levelColour(level ?? "tidy");
  surface.lineWidth = 1.6;
  if (level !== null) surface.stroke();
  drawText(surface, {
    text: wording(gap).find((text) => measure(text, face) + 4 <= chip.width) ?? "",
    x: chip.x + chip.width / 2,
    y: chip.y + chip.height / 2 + FIGURE.size * 0.35,
    face,
    colour: level === null ? PALETTE.text : levelColour(level),
    align: "center",
  });
  surface.restore();
}

/** What the chip says, the fullest first. */
function wording({ frames, expected, level }: GapCell): readonly string[] {
  const plain = String(frames);
  if (level === null || expected === null || expected === frames) return [plain];
  const wanted = Number(expected.toFixed(1));
  return [`${plain} (expected ${wanted})`, `${plain} (${wanted})`, plain];
}
