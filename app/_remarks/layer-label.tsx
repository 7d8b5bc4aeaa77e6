import { PANEL } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import styles from "./layer.module.css";
import { LEAST_LABELLED_PX } from "./pointer-props";

const LABEL_PX = 13;
const LETTER_EM = 0.56; // mean width of a bold letter: only keeps the label inside the paper

export interface LayerLabelProps {
  /** Middle of the words' baseline, panel units. */
  readonly at: Point;
  readonly pixel: number;
  readonly text: string;
}

/** A few words on the drawing, kept inside the paper; none where it is too small to read them. */
export function LayerLabel({ at, pixel, text }: LayerLabelProps) {
  if (PANEL.width / pixel < LEAST_LABELLED_PX) return null;
  const half = (text.length * LETTER_EM * LABEL_PX * pixel) / 2;
  const x = Math.min(PANEL.width - half, Math.max(half, at.x));
  const y = Math.min(PANEL.height - 4 * pixel, at.y);
  return (
    <text
      className={styles.label}
      x={x}
      y={y}
      fontSize={LABEL_PX * pixel}
      strokeWidth={4 * pixel}
      textAnchor="middle"
    >
      {text}
    </text>
  );
}
