export { amountOf } from "./amount-of";
export { dayWords } from "./day-words";
export { drawCell } from "./draw-cell";
export { drawGaps } from "./draw-gaps";
export { drawHipChart, type HeightRange, type HipChart, hipRange } from "./draw-hip-chart";
export { drawLegend } from "./draw-legend";
export { drawLimbs, drawMark, drawMarks, traceSide } from "./draw-marks";
export {
  drawGround,
  drawHipLine,
  drawInk,
  drawPanel,
  drawPaper,
  hipsMiddle,
  type PanelDrawing,
} from "./draw-panel";
export { drawRemarks, type PointedRemark, type RemarksOnPanel } from "./draw-remarks";
export { drawRuler, drawStem } from "./draw-ruler";
export { drawSign, SIGN_WORDS, type SignKind } from "./draw-sign";
export { drawStroke, fillOutline } from "./draw-stroke";
export { embedFonts, type FontFace } from "./embed-fonts";
export { groundUnder } from "./ground-under";
export { type HipRemarks, type Hitch, hipRemarks } from "./hip-remarks";
export { LABEL } from "./label-size";
export {
  type LabelWords,
  type LaidRemark,
  layOutRemarks,
  type RemarksInView,
} from "./lay-out-remarks";
export { ONE_PAGE, type PageChoice, type PageFormat, pageFormat, UNIT_MM } from "./page-format";
export type { PageWish } from "./page-frame";
export { layOutPages, type PageLayout } from "./page-layout";
export { pageSvg } from "./page-svg";
export { inkColour, levelColour, levelWash, PALETTE, sideColour } from "./palette";
export { type Orientation, PAPER_NAMES, PAPERS, type PaperName } from "./paper";
export { placeLabel } from "./place-label";
export type { Line, Path, RemarkShape, ShapeOn, ShapePanel } from "./point-at/shape";
export { type KeyedRemark, keyRemarks, remarksOn } from "./remark-keys";
export { remarkShape } from "./remark-shape";
export { type Ruler, rulerX, spread } from "./ruler";
export { type ShapePaper, shapeOn } from "./shape-on";
export {
  type Box,
  traceArrowHead,
  traceBox,
  traceCircle,
  traceDiamond,
  traceLine,
  tracePolygon,
  traceSquare,
  traceTriangle,
} from "./shapes";
export { natureWords, tempoWords } from "./sheet-words";
export type { Cell, StripLayout, StripRow } from "./strip-layout";
export { type Need, sumUpNeeds } from "./sum-up-needs";
export type { Surface } from "./surface";
export { SvgSurface } from "./svg-surface";
export { svgText } from "./svg-text";
export { ellipsise, wrapAtMost, wrapText } from "./text-lines";
export { drawText, type TextRun } from "./text-run";
export {
  FAMILY,
  type Face,
  fontOf,
  type MeasureText,
  measureShipped,
  missingLetters,
} from "./typeface";
export { WEIGHTS, type Weight } from "./weight";
export { WHOLE_VIEW } from "./whole-view";
