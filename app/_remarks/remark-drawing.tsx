import type { Path, RemarkShape } from "../../lib/export";
import type { Level } from "../../lib/gait";
import { ArrowHead } from "./arrow-head";
import styles from "./layer.module.css";

export interface RemarkDrawingProps {
  readonly shape: RemarkShape;
  readonly level: Level;
  /** How many panel units one pixel of the screen is: lines and figures keep their size. */
  readonly pixel: number;
  /** This is the remark that the margin is pointing out. */
  readonly pointed: boolean;
}

const RING_PX = 7;
const LETTER_PX = 13;

/** A remark on the drawing: what is there, what it is held against, and the way from the one to the other. */
export function RemarkDrawing({ shape, level, pixel, pointed }: RemarkDrawingProps) {
  const { area, dashed, solid, rings, letters, arrow } = shape;
  const line = (pointed ? 2.4 : 1.6) * pixel;
  return (
    <g className={styles.pointer} data-level={level} data-pointed={pointed}>
      {area !== null && <rect className={styles.gap} {...area} />}
      {dashed.map((path) => (
        <Stroke key={namedBy(path)} path={path} width={line} dash={`${6 * pixel} ${4 * pixel}`} />
      ))}
      {solid.map((path) => (
        <Stroke key={namedBy(path)} path={path} width={1.25 * line} />
      ))}
      {rings.map(({ x, y }) => (
        <circle
          key={`${x},${y}`}
          className={styles.ring}
          cx={x}
          cy={y}
          r={RING_PX * pixel}
          strokeWidth={line}
        />
      ))}
      {arrow !== null && <Stroke path={arrow} width={line} />}
      {arrow !== null && <ArrowHead from={arrow[0]} to={arrow[1]} size={headSize(arrow, pixel)} />}
      {letters.map(({ text, at }) => (
        <text
          key={text}
          className={styles.label}
          {...at}
          fontSize={LETTER_PX * pixel}
          strokeWidth={4 * pixel}
          textAnchor="middle"
        >
          {text}
        </text>
      ))}
    </g>
  );
}

interface StrokeProps {
  readonly path: Path;
  readonly width: number;
  readonly dash?: string;
}

function Stroke({ path, width, dash }: StrokeProps) {
  return (
    <polyline
      className={styles.line}
      points={namedBy(path)}
      strokeWidth={width}
      strokeDasharray={dash}
    />
  );
}

function namedBy(path: Path): string {
  return path.map(({ x, y }) => `${x},${y}`).join(" ");
}

/** A short arrow is all head. Panel units. */
function headSize([from, to]: Path, pixel: number): number {
  if (from === undefined || to === undefined) return 0;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return Math.min(7 * pixel, Math.max(3 * pixel, length));
}
