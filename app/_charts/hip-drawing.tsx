import type { Review } from "../../lib/gait";
import { charts, remarks } from "../_words";
import { ChartPicture } from "./chart-picture";
import styles from "./charts.module.css";
import type { HipDot, HipLine } from "./hip-line";

export interface HipDrawingProps {
  readonly line: HipLine;
  readonly review: Review;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

/** The picture of the hip chart: expected bands, the line, a dot and its whisker a panel. */
export function HipDrawing({ line, review, width, height }: HipDrawingProps) {
  const heights = line.dots.map((dot) => dot.height);
  const low = Math.min(...heights).toFixed(2);
  const high = Math.max(...heights).toFixed(2);
  const all = review.hipCurve.points.length;
  return (
    <ChartPicture
      title={charts.hipsTitle}
      summary={`${charts.hipsSummary(heights.length, all, low, high)} ${charts.hipsBand(remarks.yardstick.name[review.yardstick])}`}
      width={width}
      height={height}
    >
      {line.rules.map(({ height, y }) => (
        <line key={height} className={styles.rule} x1={0} x2={width} y1={y} y2={y} />
      ))}
      {line.bands.map((points) => (
        <polygon key={points} className={styles.band} points={points} />
      ))}
      {line.runs.map((run) => (
        <polyline key={run[0]?.panel} className={styles.line} points={pointsOf(run)} />
      ))}
      {line.hitches.map((ends) => (
        <path
          key={ends.map(({ panel }) => panel).join(" ")}
          className={styles.hitch}
          d={hitchPath(ends)}
        />
      ))}
      {line.dots.map((dot) => (
        <Dot key={dot.panel} dot={dot} />
      ))}
    </ChartPicture>
  );
}

const pointsOf = (run: readonly HipDot[]): string =>
  run.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" ");

const CARET = 6; // px, half a hitch's sign over its stretch of the line

function hitchPath([from, to]: readonly [HipDot, HipDot]): string {
  const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2 - CARET];
  return `M${from.x} ${from.y}L${to.x} ${to.y}M${x - CARET} ${y}l${CARET}-${CARET}l${CARET} ${CARET}`;
}

const CAP = 3.5; // px, half a whisker's end
const SQUARE = 5; // px, half a remarked dot: told by shape as well as colour

function Dot({ dot: { x, y, top, bottom, remarked } }: { readonly dot: HipDot }) {
  const whisker = `M${x} ${top}V${bottom}M${x - CAP} ${top}h${2 * CAP}M${x - CAP} ${bottom}h${2 * CAP}`;
  return (
    <g data-remarked={remarked} className={styles.dot}>
      {bottom - top > 2 && <path d={whisker} />}
      {remarked ? (
        <rect x={x - SQUARE} y={y - SQUARE} width={2 * SQUARE} height={2 * SQUARE} />
      ) : (
        <circle cx={x} cy={y} r="4" />
      )}
    </g>
  );
}
