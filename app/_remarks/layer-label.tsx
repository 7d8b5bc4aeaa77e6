import { PANEL } from "../../lib/body";
import type { Point } from "../../lib/geometry";
import styles from "./layer.module.css";
import { LEAST_LABELLED_PX } from "./pointer-props";

const LABEL_PX = { small: 12, large: 14 } as const;
const SMALL_PAPER_PX = 150;
const LETTER_EM = 0.62; // mean width of a bold letter: only keeps the label inside the paper

export interface LayerLabelProps {
  /** Middle of the words' baseline, panel units. */
  readonly at: Point;
  readonly pixel: number;
  readonly text: string;
}

/** A few words on the drawing, kept inside the paper; none where it is too small to read them. */
export function LayerLabel({ at, pixel, text }: LayerLabelProps) {
  const paper = PANEL.width / pixel;
  if (paper < LEAST_LABELLED_PX) return null;
  const size = (paper < SMALL_PAPER_PX ? LABEL_PX.small : LABEL_PX.large) * pixel;
  const half = (text.length * LETTER_EM * size) / 2;
  const x = Math.min(PANEL.width - half, Math.max(half, at.x));
  const y = Math.min(PANEL.height - 3 * pixel, at.y);
  return (
    <text
      className={styles.label}
      x={x}
      y={y}
      fontSize={size}
      strokeWidth={4 * pixel}
      textAnchor="middle"
    >
      {text}
    </text>
  );
}
