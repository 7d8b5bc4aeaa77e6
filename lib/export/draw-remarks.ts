import type { Stretch } from "../body";
import type { Remark } from "../gait";
import type { View } from "../geometry";
import type { Panel } from "../sheet";
import { amountOf } from "./amount-of";
import { drawRemarkShape } from "./draw-remark-shape";
import { drawSign } from "./draw-sign";
import { LABEL } from "./label-size";
import { type LabelWords, type LaidRemark, layOutRemarks } from "./lay-out-remarks";
import { levelColour, PALETTE } from "./palette";
import { shapeOn } from "./shape-on";
import { type Box, traceBox } from "./shapes";
import type { Surface } from "./surface";
import { drawText } from "./text-run";
import type { Face } from "./typeface";

/** A remark with its number where the page numbers them. */
export interface PointedRemark {
  readonly remark: Remark;
  readonly key?: number;
}

/** The remarks to point at in one view of a panel. */
export interface RemarksOnPanel {
  readonly panel: Panel;
  readonly view: View;
  /** Remarks seen on this panel, gravest first. */
  readonly remarks: readonly PointedRemark[];
  /** All of the sheet, in frame order: remarks compare with them. */
  readonly panels: readonly Panel[];
  /** The ground each panel looks at: see `groundUnder`. */
  readonly stretchOf: (panel: Panel) => Stretch;
  /** What is carried, as a share of body mass. */
  readonly load: number;
  /** What is seen of the view, panel units. */
  readonly window: Box;
  /** Panel units a pixel of the result. */
  readonly pixel: number;
  /** Places that labels keep clear of, panel units. */
  readonly keepClear?: readonly Box[];
}

const LABEL_PX = 13;
const NARROW_PX = 125; // on a narrower view the amount would cover the figure: its note tells it
const MOST_WHOLE = 2; // in one view; the rest would cover the figure

/**
 * Points at remarks on the drawing: the gravest whole (a slip by the dashed footprint and an arrow from it, a
 * level by the gap to it, a limb over the one it is held against), the others as a sign with their number.
 * What belongs to the ruler is shown there.
 *
 * Units:   panel units
 */
export function drawRemarks(surface: Surface, on: RemarksOnPanel): void {
  const { remarks, panel, view, window, pixel, panels, stretchOf, load, keepClear = [] } = on;
  if (remarks.length === 0) return;
  const narrow = window.width < NARROW_PX * pixel;
  const face: Face = { size: LABEL_PX * pixel, weight: 700 };
  const laid = layOutRemarks({
    ...{ remarks, window, pixel, face, keepClear, mostWhole: MOST_WHOLE },
    on: (remark) => shapeOn(remark, { panel, view, window, panels, stretchOf, load }),
    words: (one, whole) => wordsOf(one, whole && !narrow),
  });
  surface.save();
  traceBox(surface, window);
  surface.clip(); // a footprint far off must not run over the neighbours
  for (const { one, shape, whole } of laid) {
    if (whole) drawRemarkShape(surface, shape, one.remark.level, pixel);
  }
  for (const one of laid) drawLabel(surface, one, face, pixel);
  surface.restore();
}

function wordsOf({ remark, key }: PointedRemark, roomy: boolean): LabelWords {
  const amount = amountOf(remark.measured);
  if (key === undefined) return { text: roomy ? amount : "", numbered: false };
  return roomy
    ? { text: `${key}: ${amount}`, numbered: false }
    : { text: `${key}`, numbered: true };
}

/** The remark's number and how much it is, on a scrap of paper; before a number alone its level's sign. */
function drawLabel(
  surface: Surface,
  { one: { remark }, text, box, numbered }: LaidRemark<PointedRemark>,
  face: Face,
  pixel: number,
): void {
  if (text === "") return;
  const { aside, sign } = LABEL;
  surface.save();
  traceBox(surface, box);
  surface.fillStyle = PALETTE.paper;
  surface.globalAlpha = 0.85;
  surface.fill();
  surface.restore();
  const radius = sign * 0.4 * pixel;
  const middle = { x: box.x + sign * 0.5 * pixel, y: box.y + box.height / 2 };
  if (numbered) drawSign(surface, remark.level, middle, radius);
  const x = box.x + (aside + (numbered ? sign : 0)) * pixel;
  const y = box.y + box.height - 0.28 * face.size;
  drawText(surface, { text, x, y, face, colour: levelColour(remark.level) });
}
