import { PANEL } from "../../lib/body";
import { useReview } from "../_room";
import { ArrowHead } from "./arrow-head";
import { hipShape } from "./hip-shape";
import styles from "./layer.module.css";
import { LayerLabel } from "./layer-label";
import type { PointerProps } from "./pointer-props";

const EDGE_PX = 6;
const ARROW_FROM_EDGE_PX = 16;

/** A hip height out of order: the line it is held against, this pose's own, and the gap between. */
export function HipGap({ remark, view, pixel, pointed }: PointerProps) {
  const shape = hipShape(remark, useReview());
  if (shape === null || shape.view !== view) return null;
  const { here, there } = shape;
  const x1 = EDGE_PX * pixel;
  const x2 = PANEL.width - EDGE_PX * pixel;
  const x = PANEL.width - ARROW_FROM_EDGE_PX * pixel;
  const line = (pointed ? 2.4 : 1.6) * pixel;
  const above = here < there;
  const sign = remark.measured.value < 0 ? "−" : "+";
  const text = `${sign}${(100 * Math.abs(remark.measured.value)).toFixed(1)} %`;
  return (
    <g className={styles.pointer} data-level={remark.level} data-pointed={pointed}>
      <rect
        className={styles.gap}
        x={x1}
        width={x2 - x1}
        y={Math.min(here, there)}
        height={Math.abs(here - there)}
      />
      <line
        className={styles.line}
        x1={x1}
        x2={x2}
        y1={there}
        y2={there}
        strokeWidth={line}
        strokeDasharray={`${6 * pixel} ${4 * pixel}`}
      />
      <line className={styles.line} x1={x1} x2={x2} y1={here} y2={here} strokeWidth={line} />
      <ArrowHead
        from={{ x, y: there }}
        to={{ x, y: here }}
        size={Math.min(7 * pixel, Math.max(3 * pixel, Math.abs(here - there)))}
      />
      <LayerLabel
        at={{ x, y: above ? here - 6 * pixel : here + 15 * pixel }}
        pixel={pixel}
        text={text}
      />
    </g>
  );
}
