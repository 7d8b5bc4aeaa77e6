import { amountOf, type Line, remarkShape } from "../../lib/export";
import { ArrowHead } from "./arrow-head";
import styles from "./layer.module.css";
import { LayerLabel } from "./layer-label";
import type { PointerProps } from "./pointer-props";

/** What one pose alone shows: the weight's plumb line, a foot's gap to the ground, its tilt. */
export function PosePointer({ remark, panel, view, pixel, pointed }: PointerProps) {
  const shape = remarkShape(remark, panel, view);
  if (shape === null) return null;
  const line = (pointed ? 2.4 : 1.6) * pixel;
  const { arrow } = shape;
  return (
    <g className={styles.pointer} data-level={remark.level} data-pointed={pointed}>
      {shape.dashed.map((ends) => (
        <Stroke key={nameOf(ends)} ends={ends} width={line} dash={`${6 * pixel} ${4 * pixel}`} />
      ))}
      {shape.solid.map((ends) => (
        <Stroke key={nameOf(ends)} ends={ends} width={1.6 * line} />
      ))}
      {arrow !== null && <Stroke ends={arrow} width={line} />}
      {arrow !== null && <ArrowHead from={arrow[0]} to={arrow[1]} size={headSize(arrow, pixel)} />}
      <LayerLabel
        at={{ x: shape.label.x, y: shape.label.y + 18 * pixel }}
        pixel={pixel}
        text={amountOf(remark.measured)}
      />
    </g>
  );
}

interface StrokeProps {
  readonly ends: Line;
  readonly width: number;
  readonly dash?: string;
}

function Stroke({ ends: [from, to], width, dash }: StrokeProps) {
  return (
    <line
      className={styles.line}
      x1={from.x}
      y1={from.y}
      x2={to.x}
      y2={to.y}
      strokeWidth={width}
      strokeDasharray={dash}
    />
  );
}

function nameOf(ends: Line): string {
  return ends.map(({ x, y }) => `${x},${y}`).join(" ");
}

/** A short arrow is all head. Panel units. */
function headSize([from, to]: Line, pixel: number): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return Math.min(7 * pixel, Math.max(3 * pixel, length));
}
